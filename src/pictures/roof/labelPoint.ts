import { cornerAfter, type Outline, type Point } from "../../../shared/outline";
import { distanceToSegment } from "../../../shared/segment";
import { isWithin } from "../../../shared/outlineWithin";

/** Steps of the search across an outline, each way. */
const STEPS = 24;
/** Room that a label gives up for each unit of distance that it comes nearer to the outline's middle. */
const PULL = 0.05;

const clearance = (outline: Outline, point: Point): number =>
  isWithin(outline, point)
    ? Math.min(
        ...outline.map((corner, index) => distanceToSegment(point, corner, cornerAfter(outline, index))),
      )
    : -1;

interface LabelCandidate extends Point {
  /** Distance to the nearest side; less than 0 outside. */
  readonly clearance: number;
}

/** A place inside an outline far from its sides, and near its middle: where a label has most room. */
export const labelPoint = (outline: Outline): LabelCandidate => {
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - low];
  const steps = Array.from({ length: STEPS }, (_, step) => (step + 0.5) / STEPS);
  const merit = (place: LabelCandidate): number =>
    place.clearance - PULL * Math.hypot(place.x - left - width / 2, place.y - low - height / 2);
  return steps
    .flatMap((across) => steps.map((up) => ({ x: left + across * width, y: low + up * height })))
    .map((place): LabelCandidate => ({ ...place, clearance: clearance(outline, place) }))
    .reduce((best, place) => (merit(place) > merit(best) ? place : best));
};
