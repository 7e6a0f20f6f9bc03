import { useState } from "preact/hooks";
import type { Roof } from "../../../functions/roof/roofParts";
import type { Host, SheetPicture } from "../../hosts/host";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../pictures/palette";
import { roofPlanPicture } from "../../pictures/roof/roofPlanPicture";
import { roofViewPicture } from "../../pictures/roof/roofViewPicture";
import { sizeOfSvg } from "../../pictures/sizeOfSvg";
import { ROOF_PICTURE, ROOF_PICTURE_BOX_PX } from "../../sheets/roofSheet/layout";
import { fitInto } from "./fitInto";
import { PutOnSheet } from "./PutOnSheet";
import { SvgBox } from "./SvgBox";

const FIRST_TURN_DEGREES = 30;

interface Props {
  readonly host: Host;
  readonly roof: Roof;
  readonly sheet: string;
}

/** A roof from above, and turned as one likes. */
export const RoofPicture = ({ host, roof, sheet }: Props) => {
  const [turnDegrees, setTurnDegrees] = useState(FIRST_TURN_DEGREES);
  const forTheSheet = (): SheetPicture => {
    const svg = roofPlanPicture(roof, {
      title: "Roof plan",
      id: `roof-${Date.now()}`,
      palette: PAPER_PALETTE,
    });
    return { sheet, at: ROOF_PICTURE, svg, ...fitInto(ROOF_PICTURE_BOX_PX, sizeOfSvg(svg)) };
  };
  return (
    <>
      <SvgBox
        svg={roofPlanPicture(roof, { title: "Roof plan", id: "pane-roof-plan", palette: SCREEN_PALETTE })}
      />
      <SvgBox
        svg={roofViewPicture(roof, turnDegrees, {
          title: "Roof, turned",
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
      <PutOnSheet host={host} picture={forTheSheet} />
    </>
  );
};
