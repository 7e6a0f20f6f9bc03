import { rafterFactor, rafterFactorSpec } from "../../../functions/slope/rafterFactor";
import { rafterLength, rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { inchesToFeet, PITCH_RUN, toDegrees } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { lengthAnswer, tapeToleranceIn, type Allowance } from "../answers/length";
import { numberAnswer } from "../answers/number";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { slopeFigure } from "../figures/slopeFigure";
import type { Setting, Topic } from "../topic";
import { lengthStep, plain, quoted, step } from "../steps";

/** `overhangIn` is 0 for beginners. */
export type RafterFacts = { readonly runIn: number; readonly rise: number; readonly overhangIn: number };

const FACTOR_TOLERANCE = 0.001;

/** How the factor is found, for a step. */
export const factorText = (rise: number, { measuring }: Setting): string =>
  measuring.units === "metric"
    ? `${measuring.writePitch(rise)}: 1 ÷ cos ${plain(toDegrees(Math.atan(rise / PITCH_RUN)))}° = ${rafterFactor(rise).toFixed(3)}`
    : `${measuring.writePitch(rise)}: √(1 + ${plain(rise / PITCH_RUN)}²) = ${rafterFactor(rise).toFixed(3)}`;

const FACTOR: CommonMistakes<RafterFacts> = {
  "left out the square root": ({ rise }) => rafterFactor(rise) ** 2,
  "used rise over run": ({ rise }) => rise / PITCH_RUN,
  "divided level by sloped": ({ rise }) => 1 / rafterFactor(rise),
};

const LENGTH: CommonMistakes<RafterFacts> = {
  "used the run as the slope length": ({ runIn, overhangIn }) => runIn + overhangIn,
  "added the rise to the run": ({ runIn, rise, overhangIn }) => (runIn + overhangIn) * (1 + rise / PITCH_RUN),
  "left out the overhang": ({ runIn, rise, overhangIn }) =>
    overhangIn === 0 ? undefined : runIn * rafterFactor(rise),
  "added the overhang without the factor": ({ runIn, rise, overhangIn }) =>
    overhangIn === 0 ? undefined : runIn * rafterFactor(rise) + overhangIn,
};

/** The tape's tolerance, plus that of a factor rounded to three decimals. */
export const factorAllowance = (levelIn: number, { measuring }: Setting): Allowance => {
  const tolerance = tapeToleranceIn(measuring) + levelIn * FACTOR_TOLERANCE;
  return {
    tolerance,
    why: `${measuring.writeSmall(tolerance)}: ${measuring.writeSmall(tapeToleranceIn(measuring))} for the tape, plus a factor rounded to three decimals times ${measuring.write(levelIn)}`,
  };
};

export const rafterTopic = {
  id: "rafter",
  title: "Rafter factor",
  reteachTip:
    "Step off a rise and run with the framing square, then measure the slant: the factor is slant length per level foot.",
  draw: (random, { level, measuring }) => ({
    runIn: measuring.drawLengthIn(random, 8, 18),
    rise: measuring.drawRise(random),
    overhangIn: level === "first hour" ? 0 : measuring.pickIn(random, [12, 16, 18, 24], [300, 400, 450, 600]),
  }),
  ask: ({ runIn, rise, overhangIn }, { measuring }) => {
    const { write, writeSmall, writePitch } = measuring;
    const overhang = overhangIn === 0 ? [] : [{ label: "Overhang, level", text: writeSmall(overhangIn) }];
    return {
      text:
        overhangIn === 0
          ? "The run was measured level, from the eave to below the ridge. Find the rafter factor and the slope length."
          : "The run was measured level, from the wall line to below the ridge; the roof overhangs the wall. Find the rafter factor, and the slope length from the eave to the ridge.",
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
          why: `${FACTOR_TOLERANCE}: the last decimal place`,
        }),
        lengthAnswer(
          "Slope length",
          lengthIn,
          measuring,
          mistakesOf(LENGTH, facts),
          factorAllowance(levelIn, setting),
        ),
      ],
      steps: [
        step(`${factorText(rise, setting)}.`, call(rafterFactorSpec, pitch), factor),
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
} as const satisfies Topic<RafterFacts>;
