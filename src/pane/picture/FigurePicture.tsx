import type { Figure } from "../../pictures/figure";
import { figureSvg } from "../../pictures/figureSvg";
import { SCREEN_PALETTE } from "../../pictures/palette";
import { SvgBox } from "./SvgBox";

/** A practice problem's picture, which its file holds as a drawing. */
export const FigurePicture = ({ figure, title }: { figure: Figure; title: string }) => (
  <SvgBox svg={figureSvg(figure, { title, id: "pane-figure", palette: SCREEN_PALETTE })} />
);
