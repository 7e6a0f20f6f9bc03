import type { FunctionSpec } from "../../../shared/spec/spec";

/** Headings that the unit of a result doesn't give: a count of courses is headed "Courses" by itself. */
const HEADINGS: Readonly<Record<string, string>> = {
  FEET: "Length (ft)",
  INCHES: "Length (in)",
  TAPE: "Tape",
  PITCHANGLE: "Pitch (degrees)",
  ANGLEPITCH: "Pitch (in 12)",
  RAFTERFACTOR: "Rafter factor",
  HIPFACTOR: "Hip factor",
  RAFTERLENGTH: "Slope length (ft)",
  HIPLENGTH: "Hip (ft)",
  SLOPEAREA: "Roof area (sq ft)",
  SLOPECHECK: "Pitch check",
  BENDANGLE: "Bend (degrees)",
  FACEANGLE: "Face angle (degrees)",
  COURSELINE: "Course line (ft)",
  TOPCOURSE: "Top course (in)",
  STAGGEROFFSET: "Stagger offset (in)",
  STARTERCOVER: "Starter cover (in)",
  STARTERBLANK: "Starter blank (in)",
  STARTERSETS: "Starter sets",
  OUTLINEAREA: "Area (sq ft)",
  TRIMFEET: "Trim (ft)",
  TRIMPIECES: "Trim pieces",
  TRIMSTOCK: "Trim stock lengths",
  NAILPOUNDS: "Nails (lb)",
  THERMALMOVE: "Thermal move (in)",
  SHEETWEIGHT: "Weight (lb per sq ft)",
  UNDERLAYMENT: "Underlayment rolls",
  ICEBARRIER: "Ice barrier courses",
  VENTAREA: "Vent area (sq in)",
};

/** What stands above a column of a function's results. */
export const resultHeading = ({ id, result }: FunctionSpec): string =>
  HEADINGS[id] ?? result.unit.charAt(0).toUpperCase() + result.unit.slice(1);

/** Adding these up says nothing. */
const NEVER_ADDED = ["ratio", "degrees", "in 12", "in", "lb per sq ft", "value", "text"];

export const canBeAddedUp = ({ result }: FunctionSpec): boolean => !NEVER_ADDED.includes(result.unit);
