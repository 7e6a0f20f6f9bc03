import fc from "fast-check";
import type { Point } from "../../shared/outline";

/** A face of any slants around a middle, and openings of the same look inside it; feet. */
export interface SlantedFace {
  readonly outline: readonly Point[];
  readonly openings: readonly (readonly Point[])[];
}

/** A corner for each direction in turn, so that sides can't cross. */
const around = (middle: Point, radii: readonly number[], turn: number, scale: number): Point[] =>
  radii.map((radius, index) => {
    const angle = ((index + turn) / radii.length) * 2 * Math.PI;
    return { x: middle.x + scale * radius * Math.cos(angle), y: middle.y + scale * radius * Math.sin(angle) };
  });

/** Coordinates as a person types them: many then stand exactly on chalk lines and joints. */
const snapped = (corners: readonly Point[], gridFt: number): Point[] =>
  corners.map(({ x, y }) => ({ x: Math.round(x / gridFt) * gridFt, y: Math.round(y / gridFt) * gridFt }));

export const slantedFaces: fc.Arbitrary<SlantedFace> = fc
  .record({
    radii: fc.array(fc.integer({ min: 8, max: 45 }), { minLength: 3, maxLength: 9 }),
    turn: fc.double({ min: 0, max: 1, noNaN: true }),
    gridFt: fc.constantFrom(0.5, 0.25, 1 / 12, 1e-3),
    opening: fc.option(fc.double({ min: 0.15, max: 0.45, noNaN: true }), { nil: undefined }),
    windsBack: fc.boolean(),
  })
  .map(({ radii, turn, gridFt, opening, windsBack }) => {
    const feet = radii.map((radius) => radius / 10);
    const outline = snapped(around({ x: 0, y: 0 }, feet, turn, 1), gridFt);
    return {
      outline: windsBack ? outline.reverse() : outline,
      openings: opening === undefined ? [] : [snapped(around({ x: 0, y: 0 }, feet, turn, opening), 1e-3)],
    };
  });
