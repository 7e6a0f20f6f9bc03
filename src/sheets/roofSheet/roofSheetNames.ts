/** Defined names of the roof's inputs. A workbook describes one roof. */
export const ROOF_NAMES = {
  footprint: "Footprint",
  pitch: "RoofPitch",
  ownPitches: "OwnPitches",
  pitchesUsed: "PitchesUsed",
  gables: "GableSides",
  eaveOverhang: "EaveOverhang",
  rakeOverhang: "RakeOverhang",
} as const;

/** The first arguments of every roof function. One pitch per side only if a side has its own pitch. */
export const FOOTPRINT_AND_PITCH = [
  ROOF_NAMES.footprint,
  // Only the rows of sides: a blank row before a courtyard isn't a side.
  `IF(COUNTA(${ROOF_NAMES.ownPitches})=0,${ROOF_NAMES.pitch},FILTER(${ROOF_NAMES.pitchesUsed},LEN(${ROOF_NAMES.pitchesUsed})>0))`,
] as const;

export const GABLES_AND_OVERHANGS = [
  ROOF_NAMES.gables,
  ROOF_NAMES.eaveOverhang,
  ROOF_NAMES.rakeOverhang,
] as const;

export const ROOF_ARGUMENTS = [...FOOTPRINT_AND_PITCH, ...GABLES_AND_OVERHANGS] as const;
