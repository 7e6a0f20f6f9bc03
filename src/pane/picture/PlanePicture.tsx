import { useEffect, useMemo, useState } from "preact/hooks";
import { layOut } from "../../../functions/layout/engine/layOut";
import type { Layout } from "../../../functions/layout/engine/layoutResult";
import { writeStart, type LayoutStart } from "../../../shared/layoutStart";
import { errorMessage } from "../../workbook/errorMessage";
import type { Host, SheetPicture } from "../../workbook/host";
import { frameOf } from "../../pictures/frame";
import { layoutPicture } from "../../pictures/layoutPicture";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../pictures/palette";
import { PICTURE, PICTURE_BOX_PX } from "../../sheets/fieldSheet/fieldSheetLayout";
import { captionPatch } from "../../sheets/fieldSheet/pictureCaption";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { PANEL_NAME } from "../../sheets/panelSheet";
import type { CellPatch } from "../../workbook/patch";
import { isFieldSheet, type ActivePlane } from "../../sheets/activeSheet/activePlane";
import { BestStartFinder } from "./BestStartFinder";
import { scaleToFit } from "./scaleToFit";
import { InsertPicture } from "./InsertPicture";
import { SaveStart } from "./SaveStart";
import { ResizablePicture } from "./ResizablePicture";

type Laid = { readonly layout: Layout } | { readonly sentence: string };

const lay = ({ plane, panel }: ActivePlane, start: LayoutStart): Laid => {
  try {
    return { layout: layOut(plane, panel, start, true) };
  } catch (failure) {
    return { sentence: errorMessage(failure) };
  }
};

const forTheSheet = (layout: Layout, name: string, sheet: string): SheetPicture => ({
  sheet,
  at: PICTURE,
  svg: layoutPicture(layout, { title: name, id: `plane-${Date.now()}`, palette: PAPER_PALETTE }),
  ...scaleToFit(PICTURE_BOX_PX, frameOf(layout)),
});

interface Props {
  readonly host: Host;
  readonly plane: ActivePlane;
  readonly view: ActiveSheet;
}

/** The layout of a plane, course by course. */
export const PlanePicture = ({ host, plane, view }: Props) => {
  const [found, setFound] = useState<LayoutStart>();
  // A best start is dropped when the plane or its own start changes.
  const described = JSON.stringify(plane);
  useEffect(() => {
    setFound(undefined);
  }, [described]);
  const laid = useMemo(() => lay(plane, found ?? plane.start), [described, found]);
  if ("sentence" in laid) return <p class="hint">{laid.sentence}</p>;
  const { layout } = laid;
  const svg = layoutPicture(layout, { title: plane.name, id: "pane-plane", palette: SCREEN_PALETTE });
  const better = found && writeStart(found) !== writeStart(plane.start) ? found : undefined;
  /** The field sheet's chalk lines use the sheet's own start, so the caption tells if the picture uses another. */
  const caption = async (): Promise<CellPatch> => {
    const panel = (await host.namedRange(PANEL_NAME)) ?? [];
    return captionPatch(view, panel, better && writeStart(better));
  };
  return (
    <>
      <ResizablePicture svg={svg} />
      <BestStartFinder key={described} plane={plane} onFound={setFound} />
      <SaveStart host={host} view={view} start={better} />
      <InsertPicture
        host={host}
        name="picture"
        picture={() => forTheSheet(layout, plane.name, view.sheet)}
        {...(isFieldSheet(view) && { caption })}
      />
    </>
  );
};
