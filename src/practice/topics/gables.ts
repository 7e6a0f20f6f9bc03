import { rafterFactor } from "../../../functions/slope/rafterFactor";
import { rafterLength, rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { feetSpec } from "../../../functions/measure/feet";
import { SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { call } from "../../workbook/formula";
import {
  areaAnswer,
  inAreaUnit,
  lengthAnswer,
  mistakesOf,
  writeArea,
  type Allowance,
  type Slips,
} from "../answers";
import { gablePlanFigure } from "../figures/planFigures";
import { planeFigure } from "../figures/planeFigure";
import type { Setting, Topic } from "../problem";
import { lengthStep, quoted, step } from "../steps";
import { factorAllowance, factorInWords } from "./rafter";

/** Beginners are given eave and slope; the others building, pitch and overhang, and `rise` is 0 for beginners. */
export type GableFacts = {
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly rise: number;
  readonly overhangIn: number;
};

const SIDES = 2;
const RAKES = 4;

const eaveOf = ({ lengthIn, overhangIn }: GableFacts): number => lengthIn + 2 * overhangIn;
/** For beginners `widthIn` is twice the slope, which they are given. */
const slopeOf = ({ widthIn, rise, overhangIn }: GableFacts): number =>
  rafterLength(widthIn / 2, rise, overhangIn);
const areaSqFt = (eaveIn: number, slopeIn: number): number =>
  (SIDES * eaveIn * slopeIn) / SQ_INCHES_PER_SQ_FOOT;

const SLOPE: Slips<GableFacts> = {
  "took the run for the slope length": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : widthIn / 2 + overhangIn,
  "took the whole width for the run": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : (widthIn + overhangIn) * rafterFactor(rise),
  "forgot the overhang": ({ widthIn, rise }) => (rise === 0 ? undefined : (widthIn / 2) * rafterFactor(rise)),
};

const AREA: Slips<GableFacts> = {
  "took one side only": (facts) => areaSqFt(eaveOf(facts), slopeOf(facts)) / SIDES,
  "took the area on plan": (facts) =>
    facts.rise === 0 ? undefined : areaSqFt(eaveOf(facts), facts.widthIn / 2 + facts.overhangIn),
  "forgot the overhang at the gables": (facts) =>
    facts.rise === 0 ? undefined : areaSqFt(facts.lengthIn, slopeOf(facts)),
  "forgot the overhang": ({ lengthIn, widthIn, rise }) =>
    rise === 0 ? undefined : areaSqFt(lengthIn, (widthIn / 2) * rafterFactor(rise)),
};

const TRIM: Slips<GableFacts> = {
  "took two edges only": (facts) => (RAKES / 2) * slopeOf(facts),
  "took one edge only": slopeOf,
  "took the run for the slope length": ({ widthIn, rise, overhangIn }) =>
    rise === 0 ? undefined : RAKES * (widthIn / 2 + overhangIn),
};

/** Four edges, each with what one may be off by. */
const ofFour = (runIn: number, setting: Setting): Allowance => {
  const one = factorAllowance(runIn, setting);
  return {
    tolerance: RAKES * one.tolerance,
    why: `${setting.measuring.writeSmall(RAKES * one.tolerance)}: four edges, each of which may be off by ${setting.measuring.writeSmall(one.tolerance)}`,
  };
};

export const gablesTopic: Topic<GableFacts> = {
  id: "gables",
  teachAgain:
    "Fold a sheet of card into a gable roof: two sides, four sloping edges, and the flat card is larger than its shadow.",
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
        words:
          "A gable roof has two equal sides. One was measured along the eave and up the slope. Find the area of both sides together, and how much trim all the sloping edges at both gables need.",
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
      words:
        "A building has a gable roof that goes beyond the walls on all four sides by the same overhang, measured level. The ridge stands in the middle. Find the length up the slope, the area of both sides together, and how much trim all the sloping edges at both gables need.",
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
      "Trim for all sloping edges",
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
                "Length up the slope",
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
                `${factorInWords(rise, setting)}. (${write(widthIn)} ÷ 2 + ${writeSmall(overhangIn)}) × ${rafterFactor(rise).toFixed(3)} = ${write(slopeIn)}.`,
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
};
