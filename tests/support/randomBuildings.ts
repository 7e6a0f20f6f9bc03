import { cornerAfter, type Outline, type Point } from "../../shared/outline";
import { oneOf, wholeBetween, type Random } from "./random";
import { leftOf } from "./randomRings";

const CELL_FT = 10;
const STEPS = [
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
  { x: -1, y: 1 },
  { x: -1, y: 0 },
  { x: -1, y: -1 },
  { x: 0, y: -1 },
  { x: 1, y: -1 },
] as const;
const key = ({ x, y }: Point): string => `${x},${y}`;
const stepped = ({ x, y }: Point, by: Point): Point => ({ x: x + by.x, y: y + by.y });

/** A patch of squares without holes. It grows one square at a time, only where its edge stays a single ring. */
const patch = (random: Random, squares: number): Point[] => {
  const cells: Point[] = [{ x: 0, y: 0 }];
  const taken = new Set(cells.map(key));
  while (cells.length < squares) {
    const cell = stepped(
      oneOf(random, cells),
      oneOf(
        random,
        STEPS.filter((_, index) => index % 2 === 0),
      ),
    );
    const around = STEPS.map((step) => taken.has(key(stepped(cell, step))));
    const changes = around.filter((solid, index) => solid !== around[(index + 1) % around.length]).length;
    if (taken.has(key(cell)) || changes !== 2) continue;
    taken.add(key(cell));
    cells.push(cell);
  }
  return cells;
};

/** A building of squares: all corners are right angles, and many sides are collinear, level with each other, or meet in one event. */
export const steppedRing = (random: Random, squares: number): Outline => {
  const cells = patch(random, squares);
  const taken = new Set(cells.map(key));
  const next = new Map<string, Point>();
  for (const cell of cells)
    for (const [index, corner] of [0, 1, 2, 3].entries()) {
      const step = STEPS[(corner * 2 + 6) % 8] as Point;
      if (taken.has(key(stepped(cell, step)))) continue;
      const offsets = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }]; // prettier-ignore
      next.set(key(stepped(cell, offsets[index] as Point)), stepped(cell, offsets[(index + 1) % 4] as Point));
    }
  const ring: Point[] = [];
  const [start] = next.values();
  for (let corner = start; corner && ring.length < next.size; corner = next.get(key(corner)))
    ring.push(corner);
  return ring
    .filter((corner, index) => leftOf(ring.at(index - 1) as Point, corner, cornerAfter(ring, index)) !== 0)
    .map(({ x, y }) => ({ x: x * CELL_FT, y: y * CELL_FT }));
};

const COURT_FT = 10;

/** A rectangle with courtyards on a grid, so that many planes meet in one event. */
export const courtRings = (random: Random): readonly Outline[] => {
  const [across, up] = [wholeBetween(random, 1, 4), wholeBetween(random, 1, 2)];
  const box = (left: number, low: number, right: number, high: number): Outline => [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
  const slack = (): number => oneOf(random, [0, 0, 2.5]);
  const courts = Array.from({ length: across * up }, (_, index) => {
    const [left, low] = [
      (2 * (index % across) + 1) * COURT_FT,
      (2 * Math.floor(index / across) + 1) * COURT_FT,
    ];
    return box(left - slack(), low - slack(), left + COURT_FT + slack(), low + COURT_FT + slack());
  });
  const outer = box(0, 0, (2 * across + 1) * COURT_FT, (2 * up + 1) * COURT_FT);
  return [outer, ...courts.filter(() => random() < 0.8)];
};
