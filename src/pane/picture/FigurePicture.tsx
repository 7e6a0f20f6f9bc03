import type { Figure } from "../../pictures/figure";
import { figureSvg } from "../../pictures/figureSvg";
import { SCREEN_PALETTE } from "../../pictures/palette";
import { ResizablePicture } from "./ResizablePicture";

/** The picture of a practice problem. */
export const FigurePicture = ({ figure, title }: { figure: Figure; title: string }) => (
  <ResizablePicture svg={figureSvg(figure, { title, id: "pane-figure", palette: SCREEN_PALETTE })} />
);
