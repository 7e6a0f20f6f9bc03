import { rafterFactor } from "../../../functions/slope/rafterFactor";
import { rafterLength, rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { feetSpec } from "../../../functions/measure/feet";
import { SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { areaAnswer, inAreaUnit, writeArea } from "../answers/area";
import { lengthAnswer, type Allowance } from "../answers/length";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { gablePlanFigure } from "../figures/planFigures";
import { planeFigure } from "../figures/planeFigure";
import type { Setting, Topic } from "../topic";
import { lengthStep, quoted, step } from "../steps";
import { factorAllowance, factorText } from "./rafter";

/** Beginners are given eave and slope length, and `rise` is 0; the others are given building, pitch and overhang. */
export type GableFacts = {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly rise: number;
  readonly overhangIn: number;
};

const SIDES = 2;
const RAKES = 4;

const eaveOf = ({ lengthIn, overhangIn }: GableFacts): number => lengthIn + 2 * overhangIn;
/** For beginners `widthIn` is twice the slope length. */
const slopeOf = ({ widthIn, rise, overhangIn }: GableFacts): number =>
  rafterLength(widthIn / 2, rise, overhangIn);
const areaSqFt = (eaveIn: number, slopeIn: number): number =>
  (SIDES * eaveIn * slopeIn) / SQ_INCHES_PER_SQ_FOOT;

const SLOPE: CommonMistakes<GableFacts> = {
  "used the run as the slope length": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : widthIn / 2 + overhangIn,
  "used the whole width as the run": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : (widthIn + overhangIn) * rafterFactor(rise),
  "left out the overhang": ({ widthIn, rise }) =>
    rise === 0 ? undefined : (widthIn / 2) * rafterFactor(rise),
};

const AREA: CommonMistakes<GableFacts> = {
  "counted only one side": (facts) => areaSqFt(eaveOf(facts), slopeOf(facts)) / SIDES,
  "used the area on the plan": (facts) =>
    facts.rise === 0 ? undefined : areaSqFt(eaveOf(facts), facts.widthIn / 2 + facts.overhangIn),
  "left out the overhang at the gables": (facts) =>
    facts.rise === 0 ? undefined : areaSqFt(facts.lengthIn, slopeOf(facts)),
  "left out the overhang": ({ lengthIn, widthIn, rise }) =>
    rise === 0 ? undefined : areaSqFt(lengthIn, (widthIn / 2) * rafterFactor(rise)),
};

const TRIM: CommonMistakes<GableFacts> = {
  "counted only two edges": (facts) => (RAKES / 2) * slopeOf(facts),
  "counted only one edge": slopeOf,
  "used the run as the slope length": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : RAKES * (widthIn / 2 + overhangIn),
};

/** Four times the tolerance of one edge. */
const ofFour = (runIn: number, setting: Setting): Allowance => {
  const one = factorAllowance(runIn, setting);
  return {
    tolerance: RAKES * one.tolerance,
    why: `${setting.measuring.writeSmall(RAKES * one.tolerance)}: four edges at ${setting.measuring.writeSmall(one.tolerance)} each`,
  };
};

export const gablesTopic = {
  id: "gables",
  title: "Gables",
  reteachTip:
    "Fold a sheet of card stock into a gable roof: two sides, four rakes, and the unfolded sheet is larger than its shadow.",
  draw: (random, { level, measuring }) => {
    if (level === "first hour")
      return {
        lengthIn: measuring.drawLengthIn(random, 20, 50),
        widthIn: 2 * measuring.drawLengthIn(random, 8, 20),
        rise: 0,
        overhangIn: 0,
      };
    return {
      lengthIn: measuring.drawLengthIn(random, 24, 60),
      widthIn: measuring.drawLengthIn(random, 16, 36),
      rise: measuring.drawRise(random),
      overhangIn: measuring.pickIn(random, [12, 16, 18, 24], [300, 400, 450, 600]),
    };
  },
  ask: (facts, { measuring }) => {
    const { lengthIn, widthIn, rise, overhangIn } = facts;
    const { write, writeSmall, writePitch } = measuring;
    if (rise === 0)
      return {
        text: "A gable roof has two equal sides. One side was measured along the eave and up the slope. Find the area of both sides, and the length of trim for all the rakes at both gables.",
        givens: [
          { label: "Eave", text: write(lengthIn) },
          { label: "Slope, eave to ridge", text: write(slopeOf(facts)) },
        ],
        figure: planeFigure(lengthIn, slopeOf(facts), {
          width: write(lengthIn),
          height: write(slopeOf(facts)),
        }),
      };
    return {
      text: "A gable roof overhangs the walls by the same distance on all four sides, measured level. The ridge is in the middle. Find the slope length, the area of both sides, and the length of trim for all the rakes at both gables.",
      givens: [
        { label: "Building, along the ridge", text: write(lengthIn) },
        { label: "Building, across", text: write(widthIn) },
        { label: "Pitch", text: writePitch(rise) },
        { label: "Overhang, level", text: writeSmall(overhangIn) },
      ],
      figure: gablePlanFigure(lengthIn, widthIn, overhangIn, {
        length: write(lengthIn),
        width: write(widthIn),
      }),
    };
  },
  solve: (facts, setting) => {
    const { lengthIn, widthIn, rise, overhangIn } = facts;
    const { measuring } = setting;
    const { write, writeSmall, writePitch } = measuring;
    const [eaveIn, slopeIn] = [eaveOf(facts), slopeOf(facts)];
    const area = areaSqFt(eaveIn, slopeIn);
    const runIn = widthIn / 2 + overhangIn;
    const toUnit = inAreaUnit(1, measuring);
    const feet = (lengthIn: number): string => call(feetSpec, quoted(write(lengthIn)));
    const eave =
      rise === 0 ? feet(lengthIn) : `(${feet(lengthIn)}+2*${call(feetSpec, quoted(writeSmall(overhangIn)))})`;
    const slope =
      rise === 0
        ? feet(slopeIn)
        : call(
            rafterLengthSpec,
            `${feet(widthIn)}/2`,
            quoted(writePitch(rise)),
            quoted(writeSmall(overhangIn)),
          );
    const trim = lengthAnswer(
      "Trim for all rakes",
      RAKES * slopeIn,
      measuring,
      mistakesOf(TRIM, facts),
      rise === 0 ? undefined : ofFour(runIn, setting),
    );
    return {
      answers: [
        ...(rise === 0
          ? []
          : [
              lengthAnswer(
                "Slope length",
                slopeIn,
                measuring,
                mistakesOf(SLOPE, facts),
                factorAllowance(runIn, setting),
              ),
            ]),
        areaAnswer("Area of both sides", area, measuring, mistakesOf(AREA, facts)),
        trim,
      ],
      steps: [
        ...(rise === 0
          ? []
          : [
              lengthStep(
                `${factorText(rise, setting)}. (${write(widthIn)} ÷ 2 + ${writeSmall(overhangIn)}) × ${rafterFactor(rise).toFixed(3)} = ${write(slopeIn)}.`,
                slope,
                slopeIn,
                measuring,
              ),
            ]),
        step(
          `${rise === 0 ? "" : `Eave: ${write(lengthIn)} + 2 × ${writeSmall(overhangIn)} = ${write(eaveIn)}. `}2 × ${write(eaveIn)} × ${write(slopeIn)} = ${writeArea(area, measuring)}.`,
          `${SIDES}*${eave}*${slope}${toUnit === 1 ? "" : `*${toUnit}`}`,
          inAreaUnit(area, measuring),
        ),
        lengthStep(
          `4 × ${write(slopeIn)} = ${write(RAKES * slopeIn)}, rounded only at the end.`,
          `${RAKES}*${slope}`,
          RAKES * slopeIn,
          measuring,
        ),
      ],
    };
  },
} as const satisfies Topic<GableFacts>;
