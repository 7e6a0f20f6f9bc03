import { HAIR_IN } from "./precision";

/**
 * What bounds a piece on one side: a joint with the next panel, a vertical edge of the roof (a gable), a slanted
 * one (a hip or a valley), or the edge of an opening.
 */
export type EndKind = "joint" | "gable" | "slant" | "opening";

/** A straight side from the bottom to the top of a trapezoid; inches from the start side. */
export interface Flank {
  readonly atLowIn: number;
  readonly atHighIn: number;
  readonly kind: EndKind;
}

/** A part of the face between two levels, in inches up from the eave. `near` is its flank nearer the start side. */
export interface Trapezoid {
  readonly lowIn: number;
  readonly highIn: number;
  readonly near: Flank;
  readonly far: Flank;
}

export const nearestIn = ({ near }: Trapezoid): number => Math.min(near.atLowIn, near.atHighIn);
export const farthestIn = ({ far }: Trapezoid): number => Math.max(far.atLowIn, far.atHighIn);
export const isVertical = ({ atLowIn, atHighIn }: Flank): boolean => Math.abs(atHighIn - atLowIn) <= HAIR_IN;

const at = ({ atLowIn, atHighIn }: Flank, share: number): number =>
  share === 0 ? atLowIn : share === 1 ? atHighIn : atLowIn + share * (atHighIn - atLowIn);

const levelAt = ({ lowIn, highIn }: Trapezoid, share: number): number =>
  share === 1 ? highIn : lowIn + share * (highIn - lowIn);

/** The fraction of the height at which a flank crosses a vertical line; none where it only touches it. */
const crossing = ({ atLowIn, atHighIn }: Flank, lineIn: number): number[] =>
  (atLowIn - lineIn > HAIR_IN && lineIn - atHighIn > HAIR_IN) ||
  (lineIn - atLowIn > HAIR_IN && atHighIn - lineIn > HAIR_IN)
    ? [(lineIn - atLowIn) / (atHighIn - atLowIn)]
    : [];

/** The flank between two fractions of the height, clamped to a line by `hold`; a clamped flank has the given kind. */
const part = (
  flank: Flank,
  [from, to]: readonly [number, number],
  lineIn: number,
  hold: (a: number, b: number) => number,
  kind: EndKind,
): Flank => {
  const middleIn = at(flank, (from + to) / 2);
  const isHeld = Math.abs(middleIn - lineIn) > HAIR_IN && hold(middleIn, lineIn) === lineIn;
  return {
    atLowIn: hold(at(flank, from), lineIn),
    atHighIn: hold(at(flank, to), lineIn),
    kind: isHeld ? kind : flank.kind,
  };
};

/** Clips a trapezoid to two vertical lines; the result is cut into trapezoids, lowest first. */
export const clip = (shape: Trapezoid, fromIn: number, toIn: number, kind: EndKind): Trapezoid[] => {
  if (farthestIn(shape) - fromIn <= HAIR_IN || toIn - nearestIn(shape) <= HAIR_IN) return [];
  const crossings = [shape.near, shape.far].flatMap((flank) => [
    ...crossing(flank, fromIn),
    ...crossing(flank, toIn),
  ]);
  const shares = [0, ...crossings.sort((a, b) => a - b), 1];
  return shares.slice(1).flatMap((to, index) => {
    const between = [shares[index] ?? 0, to] as const;
    const near = part(shape.near, between, fromIn, Math.max, kind);
    const far = part(shape.far, between, toIn, Math.min, kind);
    const widthIn = Math.max(far.atLowIn - near.atLowIn, far.atHighIn - near.atHighIn);
    const isThere = to > between[0] && widthIn > HAIR_IN;
    return isThere ? [{ lowIn: levelAt(shape, between[0]), highIn: levelAt(shape, to), near, far }] : [];
  });
};
