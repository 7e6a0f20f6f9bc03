/** The names by which formulas call on the roof that a workbook describes. */
export const ROOF_NAMES = {
  footprint: "Footprint",
  pitch: "RoofPitch",
  ownPitches: "OwnPitches",
  pitchesUsed: "PitchesUsed",
  gables: "GableSides",
  eaveOverhang: "EaveOverhang",
  rakeOverhang: "RakeOverhang",
} as const;

/** The arguments that every function of a roof begins with, in their order. A pitch for each side only where one has its own. */
export const FOOTPRINT_AND_PITCH = [
  ROOF_NAMES.footprint,
  // The rows of sides only: a blank row before a courtyard is no side.
  `IF(COUNTA(${ROOF_NAMES.ownPitches})=0,${ROOF_NAMES.pitch},FILTER(${ROOF_NAMES.pitchesUsed},LEN(${ROOF_NAMES.pitchesUsed})>0))`,
] as const;

export const GABLES_AND_OVERHANGS = [
  ROOF_NAMES.gables,
  ROOF_NAMES.eaveOverhang,
  ROOF_NAMES.rakeOverhang,
] as const;

export const ROOF_ARGUMENTS = [...FOOTPRINT_AND_PITCH, ...GABLES_AND_OVERHANGS] as const;
