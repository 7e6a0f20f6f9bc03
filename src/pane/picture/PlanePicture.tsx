import { useEffect, useMemo, useState } from "preact/hooks";
import { layOut } from "../../../functions/layout/engine/layOut";
import type { Layout } from "../../../functions/layout/engine/listing";
import type { LayoutStart } from "../../../shared/layoutStart";
import { failureInWords } from "../../failureInWords";
import type { Host, SheetPicture } from "../../hosts/host";
import { frameOf } from "../../pictures/frame";
import { layoutPicture } from "../../pictures/layoutPicture";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../pictures/palette";
import { PICTURE, PICTURE_BOX_PX } from "../../sheets/fieldSheet/layout";
import type { PlaneInView } from "../../sheets/planeInView";
import { BestStartFinder } from "./BestStartFinder";
import { fitInto } from "./fitInto";
import { PutOnSheet } from "./PutOnSheet";
import { SvgBox } from "./SvgBox";

type Laid = { readonly layout: Layout } | { readonly sentence: string };

const lay = ({ plane, panel }: PlaneInView, start: LayoutStart): Laid => {
  try {
    return { layout: layOut(plane, panel, start, true) };
  } catch (failure) {
    return { sentence: failureInWords(failure) };
  }
};

/** For the sheet the plane is drawn with the sheet's own start, so that picture and chalk lines can't disagree. */
const forTheSheet = (layout: Layout, name: string, sheet: string): SheetPicture => ({
  sheet,
  at: PICTURE,
  svg: layoutPicture(layout, { title: name, id: `plane-${Date.now()}`, palette: PAPER_PALETTE }),
  ...fitInto(PICTURE_BOX_PX, frameOf(layout)),
});

interface Props {
  readonly host: Host;
  readonly plane: PlaneInView;
  readonly sheet: string;
}

/** A plane laid course by course. */
export const PlanePicture = ({ host, plane, sheet }: Props) => {
  const [found, setFound] = useState<LayoutStart>();
  // What was found holds only for the plane and the start that it was found for.
  const described = JSON.stringify(plane);
  useEffect(() => {
    setFound(undefined);
  }, [described]);
  const laid = useMemo(() => lay(plane, found ?? plane.start), [described, found]);
  if ("sentence" in laid) return <p class="hint">{laid.sentence}</p>;
  const svg = layoutPicture(laid.layout, { title: plane.name, id: "pane-plane", palette: SCREEN_PALETTE });
  return (
    <>
      <SvgBox svg={svg} />
      <BestStartFinder key={described} plane={plane} onFound={setFound} />
      <PutOnSheet
        host={host}
        name="picture"
        picture={() => forTheSheet(layOut(plane.plane, plane.panel, plane.start, true), plane.name, sheet)}
      />
    </>
  );
};
