import type { Figure, Mark } from "./figure";
import type { Palette } from "./palette";
import type { PictureOptions } from "./pictureOptions";
import { svgPoints } from "./picturePoint";
import { element, line, text } from "./svg";
import { svgPicture } from "./svgPicture";

/** Room for the title above the figure. */
const TITLE_HEIGHT = 34;
const ARROW = "gw-figure-arrow";

const figureStyle = ({ rules, color }: Palette): string =>
  rules +
  [
    `.gw-figure .gw-paper{fill:${color("paper")}}`,
    `.gw-figure text{font:13px "Segoe UI",system-ui,sans-serif;fill:${color("ink")};text-anchor:middle;dominant-baseline:middle}`,
    `.gw-figure .gw-title{font-size:16px;font-weight:600}`,
    `.gw-figure .gw-start{text-anchor:start}`,
    `.gw-figure line,.gw-figure polygon{stroke:${color("ink")};stroke-width:.75}`,
    `.gw-figure .gw-edge{stroke-width:2}`,
    `.gw-figure .gw-dashed{stroke-dasharray:5 4}`,
    `.gw-figure .gw-metal{fill:${color("whole")}}`,
    `.gw-figure .gw-wall{fill:${color("wall-light")}}`,
    `.gw-figure .gw-pointer{fill:${color("warn")}}`,
    `.gw-figure .gw-head{fill:${color("ink")}}`,
  ].join("");

const markText = (mark: Mark, arrow: string): string => {
  switch (mark.kind) {
    case "line":
      return mark.points
        .slice(1)
        .map((to, index) => {
          const from = mark.points[index] ?? to;
          return line(from.x, from.y, to.x, to.y, `gw-${mark.weight}`);
        })
        .join("");
    case "dimension": {
      const { from, to } = mark;
      const ends = { "marker-start": `url(#${arrow})`, "marker-end": `url(#${arrow})` };
      return element("line", { x1: from.x, y1: from.y, x2: to.x, y2: to.y, ...ends });
    }
    case "face":
      return element("polygon", {
        points: svgPoints(mark.points),
        class: `gw-${mark.fill}`,
      });
    case "label":
      return text(mark.at.x, mark.at.y, mark.text, mark.align === "start" ? { class: "gw-start" } : {});
  }
};

/** A figure as a complete SVG file. */
export const figureSvg = ({ width, height, description, marks }: Figure, options: PictureOptions): string => {
  const arrow = `${options.id}-${ARROW}`;
  const head = element("path", { d: "M0 0L8 4L0 8Z", class: "gw-head" });
  const marker = element(
    "marker",
    {
      id: arrow,
      viewBox: "0 0 8 8",
      refX: 8,
      refY: 4,
      markerWidth: 9,
      markerHeight: 9,
      orient: "auto-start-reverse",
    },
    head,
  );
  return svgPicture(options, {
    width,
    height: height + TITLE_HEIGHT,
    description,
    className: "gw-figure",
    definitions: [element("style", {}, figureStyle(options.palette)), marker],
    content: [
      element(
        "g",
        { transform: `translate(0 ${TITLE_HEIGHT})` },
        ...marks.map((mark) => markText(mark, arrow)),
      ),
    ],
  });
};
