import {
  horizontalDimension,
  box,
  face,
  FIGURE_WIDTH,
  line,
  label,
  type Figure,
} from "../../pictures/figure";

const LEFT = 120;
const PANEL_WIDTH = 400;
const PANEL_HEIGHT = 60;
const TOP = 40;
const COURSES = 4;

/** Four courses at a gable edge (dashed), drawn as plain bands: where each starter ends is for the student to find. */
export const starterFigure = (
  setbackIn: number,
  panelWidthIn: number,
  labels: { setback: string; width: string },
): Figure => {
  const setback = (setbackIn / panelWidthIn) * PANEL_WIDTH;
  const bottom = TOP + COURSES * PANEL_HEIGHT;
  const courses = Array.from({ length: COURSES }, (_, index) => index);
  return {
    width: FIGURE_WIDTH,
    height: bottom + 90,
    description: "Four courses at a gable edge, to scale, with the setback and the panel width.",
    marks: [
      ...courses.map((course) =>
        face(
          "metal",
          ...box(LEFT + setback, bottom - (course + 1) * PANEL_HEIGHT, PANEL_WIDTH - setback, PANEL_HEIGHT),
        ),
      ),
      ...courses.map((course) =>
        label(LEFT - 44, bottom - course * PANEL_HEIGHT - PANEL_HEIGHT / 2, `course ${course + 1}`),
      ),
      line("dashed", { x: LEFT, y: TOP - 12 }, { x: LEFT, y: bottom + 8 }),
      label(LEFT, TOP - 22, "gable edge"),
      ...horizontalDimension(LEFT, LEFT + setback, bottom + 18, labels.setback),
      ...horizontalDimension(LEFT, LEFT + PANEL_WIDTH, bottom + 52, labels.width),
    ],
  };
};
