import { rafterFactor, rafterFactorSpec } from "../../../functions/slope/rafterFactor";
import { rafterLength, rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { inchesToFeet, PITCH_RUN, toDegrees } from "../../../shared/units";
import { call } from "../../workbook/formula";
import {
  lengthAnswer,
  mistakesOf,
  numberAnswer,
  usualToleranceIn,
  type Allowance,
  type Slips,
} from "../answers";
import { slopeFigure } from "../figures/slopeFigure";
import type { Setting, Topic } from "../problem";
import { lengthStep, plain, quoted, step } from "../steps";

/** `overhangIn` is 0 for beginners. */
export type RafterFacts = { readonly runIn: number; readonly rise: number; readonly overhangIn: number };

const FACTOR_TOLERANCE = 0.001;

/** In words, how a factor comes about. */
export const factorInWords = (rise: number, { measuring }: Setting): string =>
  measuring.units === "metric"
    ? `${measuring.writePitch(rise)}: 1 ÷ cos ${plain(toDegrees(Math.atan(rise / PITCH_RUN)))}° = ${rafterFactor(rise).toFixed(3)}`
    : `${measuring.writePitch(rise)}: √(1 + ${plain(rise / PITCH_RUN)}²) = ${rafterFactor(rise).toFixed(3)}`;

const FACTOR: Slips<RafterFacts> = {
  "left out the root": ({ rise }) => rafterFactor(rise) ** 2,
  "took rise over run alone": ({ rise }) => rise / PITCH_RUN,
  "took level over sloped": ({ rise }) => 1 / rafterFactor(rise),
};

const LENGTH: Slips<RafterFacts> = {
  "took the run for the slope length": ({ runIn, overhangIn }) => runIn + overhangIn,
  "added the rise to the run": ({ runIn, rise, overhangIn }) => (runIn + overhangIn) * (1 + rise / PITCH_RUN),
  "forgot the overhang": ({ runIn, rise, overhangIn }) =>
    overhangIn === 0 ? undefined : runIn * rafterFactor(rise),
  "added the overhang level": ({ runIn, rise, overhangIn }) =>
    overhangIn === 0 ? undefined : runIn * rafterFactor(rise) + overhangIn,
};

/** A factor of three decimals may be off by half of the last; the tape's mark comes on top. */
export const factorAllowance = (levelIn: number, { measuring }: Setting): Allowance => {
  const tolerance = usualToleranceIn(measuring) + levelIn * FACTOR_TOLERANCE;
  return {
    tolerance,
    why: `${measuring.writeSmall(tolerance)}: ${measuring.writeSmall(usualToleranceIn(measuring))} of the tape, and a factor of three decimals times ${measuring.write(levelIn)}`,
  };
};

export const rafterTopic: Topic<RafterFacts> = {
  id: "rafter",
  teachAgain:
    "Step a rise and run off with the square, then measure the slant: the factor is the slant for each level foot.",
  draw: (random, { level, measuring }) => ({
    runIn: measuring.drawLengthIn(random, 8, 18),
    rise: measuring.drawRise(random),
    overhangIn: level === "first hour" ? 0 : measuring.pickIn(random, [12, 16, 18, 24], [300, 400, 450, 600]),
  }),
  ask: ({ runIn, rise, overhangIn }, { measuring }) => {
    const { write, writeSmall, writePitch } = measuring;
    const overhang = overhangIn === 0 ? [] : [{ label: "Overhang, level", text: writeSmall(overhangIn) }];
    return {
      words:
        overhangIn === 0
          ? "The run was measured level, from the eave to below the ridge. Find the rafter factor, and the length up the slope."
          : "The run was measured level, from the wall line to below the ridge; the roof goes on beyond the wall. Find the rafter factor, and the length up the slope from the eave's edge to the ridge.",
      givens: [
        { label: "Run, level", text: write(runIn) },
        { label: "Pitch", text: writePitch(rise) },
        ...overhang,
      ],
      figure: slopeFigure(
        runIn,
        rise,
        {
          run: write(runIn),
          slope: "slope length: ?",
          ...(overhangIn === 0 ? {} : { overhang: writeSmall(overhangIn) }),
        },
        overhangIn,
      ),
    };
  },
  solve: (facts, setting) => {
    const { runIn, rise, overhangIn } = facts;
    const { measuring } = setting;
    const { write, writeSmall, writePitch } = measuring;
    const factor = rafterFactor(rise);
    const levelIn = runIn + overhangIn;
    const lengthIn = rafterLength(runIn, rise, overhangIn);
    const pitch = quoted(writePitch(rise));
    const level = overhangIn === 0 ? write(runIn) : `(${write(runIn)} + ${writeSmall(overhangIn)})`;
    const decimalFeet = measuring.units === "metric" ? "" : `${inchesToFeet(lengthIn).toFixed(2)} ft = `;
    return {
      answers: [
        numberAnswer("Rafter factor", factor, 3, mistakesOf(FACTOR, facts), {
          tolerance: FACTOR_TOLERANCE,
          why: `${FACTOR_TOLERANCE}: the last decimal`,
        }),
        lengthAnswer(
          "Length up the slope",
          lengthIn,
          measuring,
          mistakesOf(LENGTH, facts),
          factorAllowance(levelIn, setting),
        ),
      ],
      steps: [
        step(`${factorInWords(rise, setting)}.`, call(rafterFactorSpec, pitch), factor),
        lengthStep(
          `${level} × ${factor.toFixed(3)} = ${decimalFeet}${write(lengthIn)}.`,
          call(
            rafterLengthSpec,
            quoted(write(runIn)),
            pitch,
            ...(overhangIn === 0 ? [] : [quoted(writeSmall(overhangIn))]),
          ),
          lengthIn,
          measuring,
        ),
      ],
    };
  },
};
