import { type Flank, type Trapezoid } from "./trapezoid";
import { HAIR_IN } from "./precision";

const isLevelWith = (aIn: number, bIn: number): boolean => Math.abs(aIn - bIn) <= HAIR_IN;

/** Whether `upper` rests on `lower` along more than a point. */
const standsOn = (upper: Trapezoid, lower: Trapezoid): boolean =>
  isLevelWith(upper.lowIn, lower.highIn) &&
  Math.min(upper.far.atLowIn, lower.far.atHighIn) - Math.max(upper.near.atLowIn, lower.near.atHighIn) >
    HAIR_IN;

/** Whether a flank continues straight in the one above it; `growth` is their combined height over the height of the lower. */
const goesOn = (lower: Flank, upper: Flank, growth: number): boolean =>
  lower.kind === upper.kind &&
  isLevelWith(lower.atHighIn, upper.atLowIn) &&
  isLevelWith(lower.atLowIn + growth * (lower.atHighIn - lower.atLowIn), upper.atHighIn);

const isOneWith = (upper: Trapezoid, lower: Trapezoid): boolean => {
  if (!isLevelWith(upper.lowIn, lower.highIn)) return false;
  const growth = (upper.highIn - lower.lowIn) / (lower.highIn - lower.lowIn);
  return goesOn(lower.near, upper.near, growth) && goesOn(lower.far, upper.far, growth);
};

const joinFlanks = (lower: Flank, upper: Flank): Flank => ({ ...lower, atHighIn: upper.atHighIn });

/** Rejoins trapezoids, given lowest first, that were cut in two by a corner elsewhere in the course. */
export const joinStacked = (shapes: readonly Trapezoid[]): Trapezoid[] => {
  const joined: Trapezoid[] = [];
  for (const upper of shapes) {
    const index = joined.findIndex((lower) => isOneWith(upper, lower));
    const lower = joined[index];
    if (!lower) joined.push(upper);
    else
      joined[index] = {
        lowIn: lower.lowIn,
        highIn: upper.highIn,
        near: joinFlanks(lower.near, upper.near),
        far: joinFlanks(lower.far, upper.far),
      };
  }
  return joined;
};

const touches = (part: readonly Trapezoid[], shape: Trapezoid): boolean =>
  part.some((other) => standsOn(shape, other) || standsOn(other, shape));

/** Groups trapezoids into connected parts: a chimney as high as the course makes two pieces of one panel. */
export const connectedParts = (shapes: readonly Trapezoid[]): Trapezoid[][] => {
  if (shapes.length === 1) return [[...shapes]];
  return shapes.reduce<Trapezoid[][]>((parts, shape) => {
    const apart = parts.filter((part) => !touches(part, shape));
    const joined = parts.filter((part) => touches(part, shape)).flat();
    return [...apart, [...joined, shape]];
  }, []);
};
