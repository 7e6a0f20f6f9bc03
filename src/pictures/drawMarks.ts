import type { Layout, ListedCut, Ring } from "../../functions/layout/engine/layoutResult";
import { writeInches } from "../../shared/lengthText";
import type { PicturePoint } from "./picturePoint";
import type { Frame } from "./frame";
import { element, px, text } from "./svg";

/** The room that a piece needs to show its width. */
const ROOM = { width: 38, height: 13 };

const EMPTY_RING: Ring = [];
const outerRing = ({ rings }: ListedCut): Ring => rings[0] ?? EMPTY_RING;

const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The centroid of a piece's outline: it lies on the piece more often than the middle of its bounding box does. */
const centroidOf = (cut: ListedCut, frame: Frame): PicturePoint => {
  const ring = outerRing(cut);
  let [twiceArea, sumX, sumY] = [0, 0, 0];
  ring.forEach((from, index) => {
    const to = ring[(index + 1) % ring.length] ?? from;
    const cross = from.xIn * to.yIn - to.xIn * from.yIn;
    twiceArea += cross;
    sumX += (from.xIn + to.xIn) * cross;
    sumY += (from.yIn + to.yIn) * cross;
  });
  return { x: frame.x(sumX / (3 * twiceArea)), y: frame.y(sumY / (3 * twiceArea)) };
};

const hasRoom = (cut: ListedCut, { pxPerIn }: Frame): boolean =>
  extent(outerRing(cut).map(({ xIn }) => xIn)) * pxPerIn >= ROOM.width &&
  extent(outerRing(cut).map(({ yIn }) => yIn)) * pxPerIn >= ROOM.height;

/** The inches that each cut piece covers; a piece with a warning shows the warning sign instead. */
export const drawSizes = ({ courses }: Layout, frame: Frame): string =>
  courses
    .flatMap(({ cuts }) => cuts.filter((cut) => cut.warnings.length === 0 && hasRoom(cut, frame)))
    .map((cut) => {
      const { x, y } = centroidOf(cut, frame);
      return text(x, y + 3.5, writeInches(cut.coverIn, 16), { class: "gw-size", "text-anchor": "middle" });
    })
    .join("");

const warningSign = ({ x, y }: PicturePoint): string =>
  element("path", { d: `M${px(x)} ${px(y - 8)}l8.5 14h-17z`, class: "gw-warn" }) +
  text(x, y + 4.5, "!", { class: "gw-warn-sign", "text-anchor": "middle" });

/** Warning signs: on a piece, or at the end of a course where the warning is about the whole course. */
export const drawWarnings = ({ courses, widthIn }: Layout, frame: Frame): string =>
  courses
    .flatMap(({ cuts, warnings, lineIn, showsIn }) => {
      const faulty = cuts.filter((cut) => cut.warnings.length > 0);
      const ofPieces = faulty.reduce((sum, cut) => sum + cut.warnings.length, 0);
      const points = faulty.map((cut) => centroidOf(cut, frame));
      const endOfCourse = { x: frame.x(widthIn) + 18, y: frame.y(lineIn + showsIn / 2) };
      return warnings.length > ofPieces ? [...points, endOfCourse] : points;
    })
    .map(warningSign)
    .join("");
