import type { Facts } from "../../../src/practice/topic";
import type { ChangeOrderFacts } from "../../../src/practice/topics/changeOrder";
import type { CoursesFacts } from "../../../src/practice/topics/courses";
import type { FastenerFacts } from "../../../src/practice/topics/fasteners";
import type { GableFacts } from "../../../src/practice/topics/gables";
import type { HipFacts } from "../../../src/practice/topics/hips";
import type { TopicId } from "../../../src/practice/topics/index";
import type { OrderFacts } from "../../../src/practice/topics/order";
import type { PitchFacts } from "../../../src/practice/topics/pitch";
import type { RafterFacts } from "../../../src/practice/topics/rafter";
import type { StarterFacts } from "../../../src/practice/topics/starters";
import type { TapeFacts } from "../../../src/practice/topics/tape";
import type { TrimFacts } from "../../../src/practice/topics/trim";
import type { UnderlaymentFacts } from "../../../src/practice/topics/underlayment";

type Value = number | string;
/** Answers by the beginning of their label. */
type Values = Readonly<Record<string, Value>>;
/** Each topic's formula reads the measurements of its own topic only. */
type Formulas = Readonly<Record<TopicId, (facts: never) => Values>>;

const up = (quantity: number): number => Math.ceil(quantity - 1e-9);
const degrees = (radians: number): number => (radians * 180) / Math.PI;
const slant = (rise: number): number => Math.sqrt(1 + (rise / 12) * (rise / 12));
const FRACTIONS = [1, 0.5, 0.75, 0.25];
const cents = (amount: number): number => Math.round(amount * 100 + 1e-6 * Math.sign(amount)) / 100;

/**
 * The answers of every topic, found again from its measurements with plain arithmetic: nothing here calls Gablewright's
 * functions. The order is that of the topics' numbers, which are printed on sheets: add new topics at the end.
 */
export const SECOND_ENGINE = {
  tape: ({ readingIn: reading, otherIn: other }: TapeFacts) => ({
    "Tape reading": reading,
    "The reading in inches only": reading,
    "The reading in meters": reading,
    "Both pieces end to end": reading + other,
  }),
  pitch: ({ runIn: run, riseIn: rise }: PitchFacts) => ({
    "Pitch: rise in 12": (12 * rise) / run,
    "Slope in percent": (100 * rise) / run,
    "Angle above level": degrees(Math.atan2(rise, run)),
    "Steep is above": rise / run > 4 / 12 ? "steep" : "low slope",
  }),
  rafter: ({ runIn: run, rise, overhangIn: overhang }: RafterFacts) => ({
    "Rafter factor": slant(rise),
    "Slope length": Math.hypot(run + overhang, ((run + overhang) * rise) / 12),
  }),
  courses: ({ slopeIn: slope, exposureIn: exposure, course }: CoursesFacts) => ({
    Courses: up(slope / exposure),
    "Exposure of the last course": slope - exposure * (up(slope / exposure) - 1),
    "Chalk line": (course - 1) * exposure,
  }),
  starters: ({
    course,
    panelWidthIn: width,
    setbackIn: setback,
    foldIn: fold,
    gableCourses,
  }: StarterFacts) => {
    const share = (FRACTIONS[(course - 1) % 4] ?? NaN) * width;
    return {
      Starter: share - setback,
      "Blank to cut for it": share - setback + fold,
      "Sets of starters": up(gableCourses / 4),
    };
  },
  gables: ({ lengthIn: length, widthIn: width, rise, overhangIn: overhang }: GableFacts) => {
    const slope = (width / 2 + overhang) * slant(rise);
    return {
      "Slope length": slope,
      "Area of both sides": (2 * (length + 2 * overhang) * slope) / 144,
      "Trim for all rakes": 4 * slope,
    };
  },
  hips: ({ runIn: run, rise }: HipFacts) => ({
    "Hip factor": Math.sqrt(2 + (rise / 12) ** 2),
    "True length of the hip": Math.hypot(run, run, (run * rise) / 12),
    "Angle on the face, eave to hip": degrees(Math.atan(slant(rise))),
  }),
  trim: ({ runIn: run, stockIn: stock, lapIn: lap }: TrimFacts) => {
    // Piece by piece, as it is laid.
    let pieces = 1;
    let reach = stock;
    while (reach < run - 1e-9) {
      pieces++;
      reach += stock - lap;
    }
    return {
      Pieces: pieces,
      "Last piece with its lap": run - (reach - stock),
      "Trim used, with laps": run + (pieces - 1) * lap,
    };
  },
  fasteners: ({ runIn: run, spacingIn: spacing, rows }: FastenerFacts) => ({
    Clips: up(run / spacing) + 1,
    Nails: rows * (up(run / spacing) + 1),
  }),
  underlayment: (facts: UnderlaymentFacts) => {
    const { eaveIn, slopeIn, rollWidthIn, rollLengthIn, headLapIn, endLapIn, wrapIn } = facts;
    const courses = up((slopeIn + 2 * wrapIn - headLapIn) / (rollWidthIn - headLapIn));
    return {
      "Courses of underlayment": courses,
      Rolls: up((courses * (eaveIn + 2 * wrapIn) - endLapIn) / (rollLengthIn - endLapIn)),
    };
  },
  order: ({
    areaSqFt: area,
    wastePercent: waste,
    exposedWidthIn: w,
    exposedHeightIn: h,
    perPack,
  }: OrderFacts) => {
    const toOrder = area + (area * waste) / 100;
    const panels = up(toOrder / ((w / 12) * (h / 12)));
    return {
      "Squares to order": toOrder / 100,
      "Area to order": toOrder,
      Panels: panels,
      Packs: up(panels / perPack),
    };
  },
  "change order": (f: ChangeOrderFacts) => {
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
} satisfies Formulas;

/** The answer whose label begins with a label of the second engine; the longest one wins. */
export const secondEngineAnswer = (topic: TopicId, facts: Facts, label: string): Value => {
  const formulas: Formulas = SECOND_ENGINE;
  const values = formulas[topic](facts as never);
  const key = Object.keys(values)
    .sort((a, b) => b.length - a.length)
    .find((each) => label.startsWith(each));
  const value = values[key ?? ""];
  if (value === undefined)
    throw new Error(
      `Topic "${topic}" has no second formula for "${label}": add it to SECOND_ENGINE in tests/src/practice/secondEngine.ts.`,
    );
  return value;
};
