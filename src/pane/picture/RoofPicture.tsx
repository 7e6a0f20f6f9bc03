import { useState } from "preact/hooks";
import type { Roof } from "../../../functions/roof/roofParts";
import type { Host, SheetPicture } from "../../workbook/host";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../pictures/palette";
import type { PictureOptions } from "../../pictures/pictureOptions";
import { roofPlanPicture } from "../../pictures/roof/roofPlanPicture";
import { roofViewPicture } from "../../pictures/roof/roofViewPicture";
import { svgSize } from "../../pictures/svgSize";
import type { CellAddress } from "../../workbook/address";
import { ROOF_PICTURE_BOX_PX, ROOF_PLAN, ROOF_VIEW } from "../../sheets/roofSheet/roofSheetLayout";
import { scaleToFit } from "./scaleToFit";
import { InsertPicture } from "./InsertPicture";
import { ResizablePicture } from "./ResizablePicture";

const INITIAL_TURN_DEGREES = 30;

interface Props {
  readonly host: Host;
  readonly roof: Roof;
  readonly sheet: string;
}

/** The plan of a roof, and a view that can be turned. */
export const RoofPicture = ({ host, roof, sheet }: Props) => {
  const [turnDegrees, setTurnDegrees] = useState(INITIAL_TURN_DEGREES);
  const onPaper = (
    at: CellAddress,
    draw: (options: PictureOptions) => string,
    title: string,
  ): SheetPicture => {
    const svg = draw({ title, id: `roof-${Date.now()}`, palette: PAPER_PALETTE });
    return { sheet, at, svg, ...scaleToFit(ROOF_PICTURE_BOX_PX, svgSize(svg)) };
  };
  const drawPlan = (options: PictureOptions): string => roofPlanPicture(roof, options);
  const drawView = (options: PictureOptions): string => roofViewPicture(roof, turnDegrees, options);
  return (
    <>
      <ResizablePicture
        svg={drawPlan({ title: "Roof plan", id: "pane-roof-plan", palette: SCREEN_PALETTE })}
      />
      <ResizablePicture
        svg={drawView({
          title: "Roof view",
          id: "pane-roof-view",
          palette: SCREEN_PALETTE,
        })}
      />
      <label>
        Turn
        <input
          type="range"
          min={0}
          max={345}
          step={15}
          value={turnDegrees}
          onInput={(event) => {
            setTurnDegrees(Number(event.currentTarget.value));
          }}
        />
      </label>
      <InsertPicture host={host} name="plan" picture={() => onPaper(ROOF_PLAN, drawPlan, "Roof plan")} />
      <InsertPicture host={host} name="view" picture={() => onPaper(ROOF_VIEW, drawView, "Roof view")} />
    </>
  );
};
