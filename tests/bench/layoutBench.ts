import { bestStart } from "../../functions/layout/engine/findBestStart";
import type { Plane } from "../../functions/layout/engine/face";
import { layOut } from "../../functions/layout/engine/layOut";
import { panelBlock } from "../../shared/kinds/panelBlock";
import type { LayoutStart } from "../../shared/layoutStart";
import type { Point } from "../../shared/outline";
import { medianMs, type BenchRow } from "./measure";

const PANEL = panelBlock.read(
  [
    ["exposed width", 24],
    ["exposed height", 12],
    ["gable setback", 1.5],
    ["gable fold", 2.5],
    ["lock flange gain", 1],
    ["cut loss", 0.125],
    ["shortest piece", 3],
    ["no-bend bands", "5-6, 11-12"],
  ],
  "panel",
);
const START: LayoutStart = { side: "left", shiftIn: 0, step: 1 };

const rectangle = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/** One opening per 300 sq ft, none of them on a chalk line or a joint. */
const planeOf = (across: number, up: number): Plane => ({
  outline: rectangle(0, 0, across * 20, up * 15),
  openings: Array.from({ length: across * up }, (_, index) => {
    const [column, row] = [index % across, Math.floor(index / across)];
    return rectangle(
      column * 20 + 5.1 + ((index * 0.37) % 1),
      row * 15 + 5.2 + ((index * 0.61) % 1),
      3.3,
      4.1,
    );
  }),
});

/** 100 x 60 ft with 20 openings. */
const LARGE = planeOf(5, 4);

const GROWTH: readonly (readonly [name: string, plane: Plane])[] = [
  ["LAYOUT 1x: 100 x 30 ft, 10 openings", planeOf(5, 2)],
  ["LAYOUT 2x: 100 x 60 ft, 20 openings", LARGE],
  ["LAYOUT 4x: 200 x 60 ft, 40 openings", planeOf(10, 4)],
  ["LAYOUT 8x: 200 x 120 ft, 80 openings", planeOf(10, 8)],
];

const piecesOf = (plane: Plane): number => {
  const { whole, cut } = layOut(plane, PANEL, START, true);
  return whole + cut;
};

/** Lays planes of one, two, four and eight times the pieces, then searches for the best start. */
export const layoutBench = (): BenchRow[] => {
  const layouts = GROWTH.map(([name, plane]) => ({
    name,
    size: piecesOf(plane),
    ms: medianMs(() => layOut(plane, PANEL, START, true)),
    ...(plane === LARGE && { limitMs: 20 }),
  }));
  const [first] = layouts;
  const perPiece = first ? first.ms / first.size : NaN;
  const search = { name: "BESTSTART: 100 x 60 ft, 20 openings", size: bestStart(LARGE, PANEL).choices };
  const searchMs = medianMs(() => bestStart(LARGE, PANEL), 1, 5);
  return [
    ...layouts.map((row) => ({ ...row, ratio: row.ms / row.size / perPiece })),
    { ...search, ms: searchMs, ratio: 1, limitMs: 1000 },
  ];
};
