import type { Figure } from "../../pictures/figure";
import { figureSvg } from "../../pictures/figureSvg";
import { SCREEN_PALETTE } from "../../pictures/palette";
import { ZoomablePicture } from "./ZoomablePicture";

/** The picture of a practice problem. */
export const FigurePicture = ({ figure, title }: { figure: Figure; title: string }) => (
  <ZoomablePicture svg={figureSvg(figure, { title, id: "pane-figure", palette: SCREEN_PALETTE })} />
);
