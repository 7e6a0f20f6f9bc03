/** A corner of an outline on the sloped face: feet along the eave, feet up the slope. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The corners of a face in order around it, not closed: the last corner joins the first. */
export type Outline = readonly Point[];

/** The next corner around the outline. */
export const cornerAfter = (outline: Outline, index: number): Point =>
  outline[(index + 1) % outline.length] as Point;

/** Twice the signed area (shoelace formula): positive where the corners run counterclockwise. */
export const twiceSignedArea = (outline: Outline): number =>
  outline.reduce((sum, from, index) => {
    const to = cornerAfter(outline, index);
    return sum + (from.x * to.y - to.x * from.y);
  }, 0);
