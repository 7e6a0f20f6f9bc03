import type { Layout, ListedCourse, ListedCut } from "../../functions/layout/engine/layoutResult";
import { writeInches } from "../../shared/lengthText";
import { pathOf, type Frame } from "./frame";
import { hatchFill } from "./pictureStyle";
import { element, escapeXml, line, px, text } from "./svg";

/** Course numbers closer together than this can't be read. */
const NUMBER_SPACING = 12;
const NUMBER_STEPS = [1, 5, 10, 20, 50, 100];

const drawWhole = (
  { wholeRuns, lineIn, showsIn }: ListedCourse,
  panelWidthIn: number,
  frame: Frame,
): string => {
  const [top, height] = [frame.y(lineIn + showsIn), showsIn * frame.pxPerIn];
  return wholeRuns
    .map(({ xIn, count }) => {
      const joints = Array.from(
        { length: count - 1 },
        (_, index) => `M${px(frame.x(xIn + (index + 1) * panelWidthIn))} ${px(top)}v${px(height)}`,
      );
      const width = count * panelWidthIn * frame.pxPerIn;
      return (
        element("rect", { x: frame.x(xIn), y: top, width, height, class: "gw-whole" }) +
        (joints.length > 0 ? element("path", { d: joints.join(""), class: "gw-joint" }) : "")
      );
    })
    .join("");
};

const describeCut = (course: number, cut: ListedCut): string =>
  [
    `course ${course}, piece ${cut.piece}: covers ${writeInches(cut.coverIn, 16)} in, cut to ${writeInches(cut.blankIn, 16)} in`,
    cut.isOffcut ? `off-cut of panel ${cut.panelNumber}` : `panel ${cut.panelNumber}`,
    ...cut.warnings,
  ].join("; ");

const drawCut = (course: number, cut: ListedCut, id: string, frame: Frame): string => {
  const kind = cut.isOffcut ? "offcut" : "cut";
  const shape = { d: pathOf(cut.rings, frame), class: `gw-${kind}`, "fill-rule": "evenodd" };
  return element(
    "g",
    {},
    element("title", {}, escapeXml(describeCut(course, cut))),
    element("path", { ...shape, fill: hatchFill(id, kind) }),
  );
};

export const drawCourses = ({ courses, panelWidthIn }: Layout, id: string, frame: Frame): string =>
  courses
    .map(
      (course) =>
        drawWhole(course, panelWidthIn, frame) +
        course.cuts.map((cut) => drawCut(course.course, cut, id, frame)).join(""),
    )
    .join("");

/** The chalk lines, each with the number of the course that starts there. */
export const drawLines = ({ courses, widthIn, panelHeightIn }: Layout, frame: Frame): string => {
  const spacing = panelHeightIn * frame.pxPerIn;
  const step = NUMBER_STEPS.find((each) => each * spacing >= NUMBER_SPACING) ?? courses.length;
  const [left, right] = [frame.x(0) - 8, frame.x(widthIn) + 8];
  return courses
    .map(({ course, lineIn }) => {
      const y = frame.y(lineIn);
      const isNumbered = course === 1 || course % step === 0;
      return (
        line(left, y, right, y, "gw-line") +
        (isNumbered ? text(left - 4, y - 1, String(course), { class: "gw-small", "text-anchor": "end" }) : "")
      );
    })
    .join("");
};
