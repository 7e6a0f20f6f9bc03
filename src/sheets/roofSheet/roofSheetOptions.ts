/** A roof as measured from the ground: wall corners in plan, and a pitch. */
export interface RoofInput {
  /** Corners of the wall lines in order around, in feet or as tape text. */
  readonly corners: readonly (readonly [x: number | string, y: number | string])[];
  readonly pitch?: number | string;
  readonly eaveOverhang?: number | string;
  readonly rakeOverhang?: number | string;
  /** Numbers of the sides that are gable ends; side 1 runs from corner 1 to corner 2. */
  readonly gables: readonly number[];
}

/** A footprint to fill in. */
export const BLANK_ROOF: RoofInput = { corners: [], gables: [] };
