import { HAIR_IN, type Trapezoid } from "./trapezoid";

/** Whether `upper` stands on `lower` along more than a point. */
const standsOn = (upper: Trapezoid, lower: Trapezoid): boolean =>
  Math.abs(upper.lowIn - lower.highIn) <= HAIR_IN &&
  Math.min(upper.far.atLowIn, lower.far.atHighIn) - Math.max(upper.near.atLowIn, lower.near.atHighIn) >
    HAIR_IN;

/** Sorts trapezoids into parts that hang together: a chimney as high as the course makes two pieces of one panel. */
export const connectedParts = (shapes: readonly Trapezoid[]): Trapezoid[][] =>
  shapes.reduce<Trapezoid[][]>((parts, shape) => {
    const touches = (part: Trapezoid[]): boolean =>
      part.some((other) => standsOn(shape, other) || standsOn(other, shape));
    return [...parts.filter((part) => !touches(part)), [...parts.filter(touches).flat(), shape]];
  }, []);
