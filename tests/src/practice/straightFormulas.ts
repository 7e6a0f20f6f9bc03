import type { Facts } from "../../../src/practice/problem";

/** Answers by name, worked out from a problem's measures with plain arithmetic: nothing here calls our functions. */
export type Straight = Readonly<Record<string, number | string>>;

/** The measures of every topic; each problem has those of its own. */
type Measures = Readonly<
  Record<
    | "areaSqFt"
    | "course"
    | "eaveIn"
    | "endLapIn"
    | "exposedHeightIn"
    | "exposedWidthIn"
    | "exposureIn"
    | "foldIn"
    | "gableCourses"
    | "headLapIn"
    | "hip"
    | "hipPrice"
    | "lapIn"
    | "lengthIn"
    | "otherIn"
    | "overhangIn"
    | "packPrice"
    | "panelWidthIn"
    | "packsAfter"
    | "packsBefore"
    | "perPack"
    | "readingIn"
    | "ridgeAfter"
    | "ridgeBefore"
    | "ridgePrice"
    | "rise"
    | "riseIn"
    | "rollLengthIn"
    | "rollWidthIn"
    | "rows"
    | "runIn"
    | "setbackIn"
    | "slopeIn"
    | "spacingIn"
    | "stockIn"
    | "taxPercent"
    | "valley"
    | "valleyPrice"
    | "wastePercent"
    | "widthIn"
    | "wrapIn",
    number
  >
>;

type Formula = (facts: Measures) => Straight;

const up = (quantity: number): number => Math.ceil(quantity - 1e-9);
const degrees = (radians: number): number => (radians * 180) / Math.PI;
const slant = (rise: number): number => Math.sqrt(1 + (rise / 12) * (rise / 12));
const FRACTIONS = [1, 0.5, 0.75, 0.25];
const cents = (amount: number): number => Math.round(amount * 100 + 1e-6 * Math.sign(amount)) / 100;

/** By topic. A label that a problem doesn't have is never looked up; one that is missing here fails the test. */
const FORMULAS: Readonly<Record<string, Formula>> = {
  tape: ({ readingIn: reading, otherIn: other }) => ({
    "What the tape reads": reading,
    "The same in inches alone": reading,
    "The same in meters": reading,
    "Both pieces end to end": reading + other,
  }),
  pitch: ({ runIn: run, riseIn: rise }) => ({
    "Pitch: rise on 12": (12 * rise) / run,
    "Slope in percent": (100 * rise) / run,
    "Angle above level": degrees(Math.atan2(rise, run)),
    steep: rise / run > 4 / 12 ? "steep" : "low slope",
  }),
  rafter: ({ runIn: run, rise, overhangIn: overhang }) => ({
    "Rafter factor": slant(rise),
    "Length up the slope": Math.hypot(run + overhang, ((run + overhang) * rise) / 12),
  }),
  courses: ({ slopeIn: slope, exposureIn: exposure, course }) => ({
    Courses: up(slope / exposure),
    "The last course shows": slope - exposure * (up(slope / exposure) - 1),
    "Chalk line": (course - 1) * exposure,
  }),
  starters: ({ course, panelWidthIn: width, setbackIn: setback, foldIn: fold, gableCourses }) => {
    const share = (FRACTIONS[(course - 1) % 4] ?? NaN) * width;
    return {
      Starter: share - setback,
      "Blank to cut for it": share - setback + fold,
      "Sets of starters": up(gableCourses / 4),
    };
  },
  gables: ({ lengthIn: length, widthIn: width, rise, overhangIn: overhang }) => {
    const slope = (width / 2 + overhang) * slant(rise);
    return {
      "Length up the slope": slope,
      "Area of both sides": (2 * (length + 2 * overhang) * slope) / 144,
      "Trim for all sloping edges": 4 * slope,
    };
  },
  hips: ({ runIn: run, rise }) => ({
    "Hip factor": Math.sqrt(2 + (rise / 12) ** 2),
    "True length of the hip": Math.hypot(run, run, (run * rise) / 12),
    "Angle on the face, eave to hip": degrees(Math.atan(slant(rise))),
  }),
  trim: ({ runIn: run, stockIn: stock, lapIn: lap }) => {
    // Piece by piece, as it is laid.
    let pieces = 1;
    let reach = stock;
    while (reach < run - 1e-9) {
      pieces++;
      reach += stock - lap;
    }
    return {
      Pieces: pieces,
      "Last piece, with its lap": run - (reach - stock),
      "Trim used, laps with it": run + (pieces - 1) * lap,
    };
  },
  fasteners: ({ runIn: run, spacingIn: spacing, rows }) => ({
    Clips: up(run / spacing) + 1,
    Nails: rows * (up(run / spacing) + 1),
  }),
  underlayment: (facts) => {
    const { eaveIn, slopeIn, rollWidthIn, rollLengthIn, headLapIn, endLapIn, wrapIn } = facts;
    const courses = up((slopeIn + 2 * wrapIn - headLapIn) / (rollWidthIn - headLapIn));
    return {
      "Courses of underlayment": courses,
      Rolls: up((courses * (eaveIn + 2 * wrapIn) - endLapIn) / (rollLengthIn - endLapIn)),
    };
  },
  order: ({ areaSqFt: area, wastePercent: waste, exposedWidthIn: w, exposedHeightIn: h, perPack }) => {
    const toOrder = area + (area * waste) / 100;
    const panels = up(toOrder / ((w / 12) * (h / 12)));
    return {
      "Squares to order": toOrder / 100,
      "Area to order for": toOrder,
      Panels: panels,
      Packs: up(panels / perPack),
    };
  },
  "change order": (f) => {
    const change =
      (f.packsAfter - f.packsBefore) * f.packPrice +
      (f.ridgeAfter - f.ridgeBefore) * f.ridgePrice -
      f.valley * f.valleyPrice +
      f.hip * f.hipPrice;
    return {
      "Change before tax": cents(change),
      "Sales tax on the change": cents((cents(change) * f.taxPercent) / 100),
    };
  },
};

/** The answer that goes by a label; labels may go on with a number of the problem's own. */
export const straightAnswer = (topic: string, facts: Facts, label: string): number | string => {
  const answers = FORMULAS[topic]?.(facts as Measures) ?? {};
  const key = Object.keys(answers)
    .sort((a, b) => b.length - a.length)
    .find((each) => label.startsWith(each) || (each === "steep" && label.startsWith("Steep")));
  const answer = answers[key ?? ""];
  if (answer === undefined) throw new Error(`no straight formula for ${topic}: ${label}`);
  return answer;
};
