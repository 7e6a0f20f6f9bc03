import { CUBIC_INCHES_PER_CUBIC_FOOT, LB_PER_CU_FT_OF_KG_PER_M3 } from "./units";

/** A metal that roofing is made of, with handbook values; alloys differ a little. */
export interface Metal {
  /** As a person may write it; the first is used in lists. */
  readonly names: readonly string[];
  /** Share of its length by which it grows with each degree Fahrenheit. */
  readonly expansionPerDegreeF: number;
  readonly densityLbPerCuFt: number;
  readonly source: string;
}

/** A kelvin or degree Celsius is 9/5 of a degree Fahrenheit. */
const FAHRENHEIT_PER_KELVIN = 9 / 5;

export const METALS: readonly Metal[] = [
  {
    names: ["aluminum", "aluminium"],
    expansionPerDegreeF: 12.9e-6,
    densityLbPerCuFt: 0.099 * CUBIC_INCHES_PER_CUBIC_FOOT,
    source: "alloy 3003: 12.9e-6/°F from a table of wrought alloys, 0.099 lb/cu in nominal density",
  },
  {
    names: ["galvanized steel", "galvanised steel"],
    expansionPerDegreeF: 12e-6 / FAHRENHEIT_PER_KELVIN,
    densityLbPerCuFt: 490,
    source:
      "Gere, Mechanics of Materials, 5th ed.: steel 12e-6/°C, 490 lb/cu ft; the zinc coating is not counted",
  },
  {
    names: ["stainless steel", "stainless"],
    expansionPerDegreeF: 9.6e-6,
    densityLbPerCuFt: 8000 * LB_PER_CU_FT_OF_KG_PER_M3,
    source:
      "alloy 304: 9.6e-6/°F from a textbook's table B.6 after ASM handbooks, 8.00 g/cu cm from a data sheet",
  },
  {
    names: ["copper"],
    expansionPerDegreeF: 9.8e-6,
    densityLbPerCuFt: 0.322 * CUBIC_INCHES_PER_CUBIC_FOOT,
    source: "Copper in Architecture handbook, table 1.1A, cold rolled copper: 9.8e-6/°F, 0.322 lb/cu in",
  },
  {
    names: ["zinc"],
    expansionPerDegreeF: 22e-6 / FAHRENHEIT_PER_KELVIN,
    densityLbPerCuFt: 7200 * LB_PER_CU_FT_OF_KG_PER_M3,
    source:
      "rolled zinc-copper-titanium along the grain: 0.022 mm/(m K) and 7.2 kg/cu dm from data sheets to EN 988",
  },
];

/** Where each metal's values come from, for help. */
export const METAL_SOURCES = METALS.map(({ names: [name = ""], source }) => `${name}: ${source}`).join("; ");
