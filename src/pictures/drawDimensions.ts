import type { Layout } from "../../functions/layout/engine/layoutResult";
import { writeInches, writeTape } from "../../shared/lengthText";
import { writeStart } from "../../shared/layoutStart";
import { inchesToFeet } from "../../shared/units";
import type { Frame } from "./frame";
import { element, line, px, text } from "./svg";

const tape = (lengthIn: number): string => writeTape(inchesToFeet(lengthIn), 16);

const arrowHead = (x: number, y: number, dx: number, dy: number): string =>
  element("path", {
    d: `M${px(x)} ${px(y)}l${px(-8 * dx - 3.5 * dy)} ${px(-8 * dy - 3.5 * dx)}l${px(7 * dy)} ${px(7 * dx)}z`,
    class: "gw-arrow",
  });

/** The eave width, below the plane. */
const drawWidth = ({ widthIn }: Layout, { x, y }: Frame): string => {
  const [left, right, level] = [x(0), x(widthIn), y(0) + 24];
  return (
    line(left, level, right, level, "gw-dimension") +
    arrowHead(left, level, -1, 0) +
    arrowHead(right, level, 1, 0) +
    text((left + right) / 2, level + 17, tape(widthIn), { "text-anchor": "middle" })
  );
};

/** The length up the slope, on the right, and the top course's exposure if it is less than a full panel. */
const drawHeight = ({ widthIn, heightIn, panelHeightIn, courses }: Layout, { x, y }: Frame): string => {
  const [bottom, top, at] = [y(0), y(heightIn), x(widthIn) + 34];
  const showsIn = courses.at(-1)?.showsIn ?? panelHeightIn;
  const middle = (bottom + top) / 2;
  return (
    line(at, bottom, at, top, "gw-dimension") +
    arrowHead(at, top, 0, -1) +
    arrowHead(at, bottom, 0, 1) +
    text(at + 16, middle, tape(heightIn), {
      "text-anchor": "middle",
      transform: `rotate(-90 ${px(at + 16)} ${px(middle)})`,
    }) +
    (panelHeightIn - showsIn > 1e-6
      ? text(at + 22, top - 8, `top course shows ${writeInches(showsIn, 16)} in`, {
          class: "gw-small",
          "text-anchor": "end",
        })
      : "")
  );
};

/** The side where the courses start, with an arrow in the direction of laying. */
const drawStart = ({ start, widthIn }: Layout, { x, y }: Frame): string => {
  const fromLeft = start.side === "left";
  const [at, level] = [fromLeft ? x(0) : x(widthIn), y(0) + 52];
  const direction = fromLeft ? 1 : -1;
  return (
    line(at, level, at + 30 * direction, level, "gw-dimension") +
    arrowHead(at + 36 * direction, level, direction, 0) +
    text(at + 44 * direction, level + 4.5, `start: ${writeStart(start)}`, {
      "text-anchor": fromLeft ? "start" : "end",
    })
  );
};

export const drawDimensions = (layout: Layout, frame: Frame): string =>
  drawWidth(layout, frame) + drawHeight(layout, frame) + drawStart(layout, frame);
