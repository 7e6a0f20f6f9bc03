import type { Cell } from "../cell";
import type { Kind } from "./kind";
import { lengthInInches } from "./length";
import { bendBands } from "./bendBands";
import { metal } from "./metal";
import { count, money, quantity } from "./number";
import { pitch } from "./pitch";
import { DEFAULT_PATTERN, staggerPattern } from "./staggerPattern";

/** A row of the panel sheet: its label, how its value is read, and what holds where it is blank or absent. */
export interface PanelField<T> {
  readonly label: string;
  readonly unit: string;
  readonly kind: Kind<T>;
  /** Absent: the field is required. */
  readonly default?: Cell;
  readonly note: string;
}

const inches = lengthInInches();
const aPositiveLength = lengthInInches({ moreThan: 0 });

const field = <T>(
  label: string,
  unit: string,
  kind: Kind<T>,
  note: string,
  standard?: Cell,
): PanelField<T> =>
  standard === undefined ? { label, unit, kind, note } : { label, unit, kind, note, default: standard };

/**
 * The panel sheet: everything that a maker's installation guide says of the shingle in use.
 * Functions and templates read this list, so a field is described here and nowhere else.
 */
export const PANEL_FIELDS = {
  exposedWidthIn: field("exposed width", "in", aPositiveLength, "width of a panel that shows"),
  exposedHeightIn: field("exposed height", "in", aPositiveLength, "height of a course that shows"),
  staggerPattern: field(
    "stagger pattern",
    "",
    staggerPattern,
    "starter widths from the eave up",
    DEFAULT_PATTERN,
  ),
  gableSetbackIn: field("gable setback", "in", inches, "starter stops short of the roof's edge by this", 0),
  gableFoldIn: field("gable fold", "in", inches, "extra that is bent up at the gable", 0),
  lockFlangeGainIn: field(
    "lock flange gain",
    "in",
    inches,
    "width gained where a side lock is opened flat",
    0,
  ),
  lockLossIn: field("lock loss", "in", inches, "width lost where a cut piece keeps its own lock", 0),
  cutLossIn: field("cut loss", "in", inches, "width lost to the cut itself", 0),
  slantAllowanceIn: field("slant allowance", "in", inches, "extra on a hip or valley cut to fold or tuck", 0),
  shortestPieceIn: field("shortest piece", "in", inches, "nothing shorter is put on", 0),
  noBendBands: field("no-bend bands", "in", bendBands, "from the left lock, such as 5-6, 11-12", "none"),
  panelsPerPack: field("panels per pack", "panels", count(), "", 1),
  panelWeightLb: field("panel weight", "lb", quantity("lb"), "", 0),
  panelPrice: field("panel price", "", money(), "for one panel", 0),
  clipsPerPanel: field("clips per panel", "clips", quantity("clips"), "0: none are ordered", 0),
  trimClipSpacingIn: field("trim clip spacing", "in", aPositiveLength, "on center", 12),
  eaveNailSpacingIn: field("eave nail spacing", "in", aPositiveLength, "on center", 12),
  minimumPitch: field("minimum pitch", "in 12", pitch(), "", 3),
  trimStockIn: field("trim stock length", "in", aPositiveLength, "", 120),
  trimLapIn: field("trim lap", "in", inches, "where two lengths of trim meet; 0: they butt", 0),
  rollWidthIn: field("roll width", "in", aPositiveLength, "underlayment", 36),
  rollLengthIn: field("roll length", "in", aPositiveLength, "underlayment", 800),
  headLapIn: field("head lap", "in", inches, "underlayment, course over course", 2),
  endLapIn: field("end lap", "in", inches, "underlayment, roll after roll", 4),
  edgeWrapIn: field("edge wrap", "in", inches, "underlayment, over every edge", 1),
  foamBackersPerPanel: field("foam backers per panel", "backers", quantity("backers"), "", 0),
  nailsPerClip: field(
    "nails per clip",
    "nails",
    quantity("nails"),
    "two: UFGS 07600, cleats of flat-seam metal; the maker governs",
    2,
  ),
  nailsPerPound: field("nails per pound", "nails", quantity("nails"), "on the box; 0: not known", 0),
  packsPerPallet: field("packs per pallet", "packs", count({ atLeast: 0 }), "0: not known", 0),
  shortestTrimIn: field("shortest trim piece", "in", inches, "of a run that has joints", 0),
  trimMetal: field("trim metal", "", metal, "for its weight", "galvanized steel"),
  trimThicknessIn: field(
    "trim thickness",
    "in",
    lengthInInches({ atMost: 0.5 }),
    "for its weight, such as 0.024; 0: not known",
    0,
  ),
} as const;

type Fields = typeof PANEL_FIELDS;

/** What functions read of the panel sheet that take the whole of it: they lay panels, and each other field has a name of its own. */
export const LAYING_FIELDS = [
  "exposedWidthIn",
  "exposedHeightIn",
  "staggerPattern",
  "gableSetbackIn",
  "gableFoldIn",
  "lockFlangeGainIn",
  "lockLossIn",
  "cutLossIn",
  "slantAllowanceIn",
  "shortestPieceIn",
  "noBendBands",
] as const satisfies readonly (keyof Fields)[];

/** The panel in use, read and checked. */
export type Panel = { readonly [K in keyof Fields]: Fields[K] extends PanelField<infer T> ? T : never };

/** The panel as whatever lays it reads it. */
export type LaidPanel = Pick<Panel, (typeof LAYING_FIELDS)[number]>;
