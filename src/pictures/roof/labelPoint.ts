import { cornerAfter, type Outline, type Point } from "../../../shared/outline";
import { distanceToSegment } from "../../../shared/segment";
import { isWithin } from "../../../shared/outlineWithin";

/** Grid points of the search, in each direction. */
const STEPS = 24;
/** The clearance that a label gives up for each unit that it gets closer to the outline's middle. */
const PULL = 0.05;

const clearance = (outline: Outline, point: Point): number =>
  isWithin(outline, point)
    ? Math.min(
        ...outline.map((corner, index) => distanceToSegment(point, corner, cornerAfter(outline, index))),
      )
    : -1;

interface LabelCandidate extends Point {
  /** Distance to the nearest side; negative outside. */
  readonly clearance: number;
}

/** Where a label has the most room: far from the outline's sides (its pole of inaccessibility), and near its middle. */
export const labelPoint = (outline: Outline): LabelCandidate => {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - low];
  const steps = Array.from({ length: STEPS }, (_, step) => (step + 0.5) / STEPS);
  const score = (point: LabelCandidate): number =>
    point.clearance - PULL * Math.hypot(point.x - left - width / 2, point.y - low - height / 2);
  return steps
    .flatMap((across) => steps.map((up) => ({ x: left + across * width, y: low + up * height })))
    .map((point): LabelCandidate => ({ ...point, clearance: clearance(outline, point) }))
    .reduce((best, point) => (score(point) > score(best) ? point : best));
};
