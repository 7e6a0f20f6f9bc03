import type { Cell } from "../../shared/cell";
import { panelBlock } from "../../shared/kinds/panelBlock";
import type { LayoutStart } from "../../shared/layoutStart";
import type { Outline, Point } from "../../shared/outline";
import type { Panel } from "../../shared/kinds/panel";

export const LEFT: LayoutStart = { side: "left", shiftIn: 0, step: 1 };
export const RIGHT: LayoutStart = { ...LEFT, side: "right" };

/** A panel of 24 x 12 in, or what else the fields say. */
export const panelOf = (fields: Readonly<Record<string, Cell>> = {}): Panel =>
  panelBlock.read(Object.entries({ "exposed width": 24, "exposed height": 12, ...fields }), "panel");

export const cornersOf = (...corners: readonly (readonly [number, number])[]): Point[] =>
  corners.map(([x, y]) => ({ x, y }));

export const rectangle = (x: number, y: number, width: number, height: number): Point[] =>
  cornersOf([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

export const mirrored = (corners: readonly Point[]): Point[] => corners.map(({ x, y }) => ({ x: -x, y }));

/** Corners moved so that the outline's leftmost and lowest are at 0, as a layout sees them. */
export const movedToCorner = (outline: Outline, corners: Outline): Outline => {
  const [left, low] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))];
  return corners.map(({ x, y }) => ({ x: x - left, y: y - low }));
};
