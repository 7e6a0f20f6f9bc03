import type { Layout } from "../../functions/layout/engine/layoutResult";
import { writeTape } from "../../shared/lengthText";
import { inchesToFeet } from "../../shared/units";
import { drawCourses, drawLines } from "./drawCourses";
import { drawDimensions } from "./drawDimensions";
import { drawLegend } from "./drawLegend";
import { drawSizes, drawWarnings } from "./drawMarks";
import { frameOf, pathOf } from "./frame";
import type { PictureOptions } from "./pictureOptions";
import { hatches, hatchFill, pictureStyle } from "./pictureStyle";
import { element } from "./svg";
import { svgPicture } from "./svgPicture";

const warningCount = ({ courses }: Layout): number =>
  courses.reduce((sum, { warnings }) => sum + warnings.length, 0);

const describeLayout = (layout: Layout): string => {
  const { widthIn, heightIn, courses, panels, whole, cut, fromOffcuts, openings } = layout;
  const [width, height] = [widthIn, heightIn].map((lengthIn) => writeTape(inchesToFeet(lengthIn), 16));
  return (
    `A roof plane ${width} wide and ${height} up the slope, in ${courses.length} courses laid from the ${layout.start.side}: ` +
    `${panels} panels to open, ${whole} whole panels, ${cut} cut pieces of which ${fromOffcuts} come from off-cuts, ` +
    `${openings.length} openings, ${warningCount(layout)} warnings.`
  );
};

/** The layout of a plane as an SVG file: to scale, with numbered chalk lines, and a hatch pattern for each kind of piece. */
export const layoutPicture = (layout: Layout, options: PictureOptions): string => {
  const { id, palette } = options;
  const frame = frameOf(layout);
  const { width, height } = frame;
  const content = [
    drawLines(layout, frame),
    drawCourses(layout, id, frame),
    ...layout.openings.map((ring) =>
      element("path", { d: pathOf([ring], frame), class: "gw-gap", fill: hatchFill(id, "gap") }),
    ),
    element("path", { d: pathOf([layout.outline], frame), class: "gw-outline" }),
    drawSizes(layout, frame),
    drawWarnings(layout, frame),
    drawDimensions(layout, frame),
    drawLegend(layout, warningCount(layout), id, frame),
  ];
  return svgPicture(options, {
    width,
    height,
    className: "gw-layout",
    description: describeLayout(layout),
    definitions: [pictureStyle(palette), hatches(id, palette)],
    content,
  });
};
