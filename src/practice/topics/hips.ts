import { faceAngle, faceAngleSpec } from "../../../functions/slope/faceAngle";
import { hipFactor, hipFactorSpec } from "../../../functions/slope/hipFactor";
import { hipLength, hipLengthSpec } from "../../../functions/slope/hipLength";
import { rafterFactor } from "../../../functions/slope/rafterFactor";
import { PITCH_RUN } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { lengthAnswer } from "../answers/length";
import { degreesAnswer, numberAnswer } from "../answers/number";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { hipPlanFigure } from "../figures/planFigures";
import type { Topic } from "../topic";
import { lengthStep, plain, quoted, step } from "../steps";
import { factorAllowance } from "./rafter";

export type HipFacts = { readonly runIn: number; readonly rise: number };

const FACTOR_TOLERANCE = 0.001;
const RIGHT_ANGLE = 90;
const PLAN_ANGLE = 45;

const FACTOR: CommonMistakes<HipFacts> = {
  "used the rafter factor": ({ rise }) => rafterFactor(rise),
  "used the hip's length on the plan": () => Math.SQRT2,
  "left out the square root": ({ rise }) => hipFactor(rise) ** 2,
};

const LENGTH: CommonMistakes<HipFacts> = {
  "used the rafter factor": ({ runIn, rise }) => runIn * rafterFactor(rise),
  "used the hip's length on the plan": ({ runIn }) => runIn * Math.SQRT2,
  "used the hip's own run as the common run": ({ runIn, rise }) => runIn * Math.SQRT2 * hipFactor(rise),
};

const ANGLE: CommonMistakes<HipFacts> = {
  "used the angle on the plan": () => PLAN_ANGLE,
  "measured from the wrong side": ({ rise }) => RIGHT_ANGLE - faceAngle(rise),
};

export const hipsTopic = {
  id: "hips",
  title: "Hips and valleys",
  reteachTip:
    "Lay a stick along a hip of the folded card stock: seen from above it runs at 45°, on the roof face it doesn't, and it is longer than a rafter.",
  draw: (random, { measuring }) => ({
    runIn: measuring.drawLengthIn(random, 6, 16),
    rise: measuring.drawRise(random),
  }),
  ask: ({ runIn, rise }, { level, measuring }) => ({
    text:
      "Two slopes of the same pitch meet in a hip at a square corner; a valley is figured the same way. The common run was measured level, square to the eave. Find the hip factor, and the true length of the hip." +
      (level === "full roof"
        ? " Also find the angle on the roof face between eave and hip, at which panels are cut."
        : ""),
    givens: [
      { label: "Common run, level", text: measuring.write(runIn) },
      { label: "Pitch of both slopes", text: measuring.writePitch(rise) },
    ],
    figure: hipPlanFigure(measuring.write(runIn)),
  }),
  solve: (facts, setting) => {
    const { runIn, rise } = facts;
    const { level, measuring } = setting;
    const { write, writePitch } = measuring;
    const factor = hipFactor(rise);
    const lengthIn = hipLength(runIn, rise);
    const angle = faceAngle(rise);
    const pitch = quoted(writePitch(rise));
    return {
      answers: [
        numberAnswer("Hip factor", factor, 3, mistakesOf(FACTOR, facts), {
          tolerance: FACTOR_TOLERANCE,
          why: `${FACTOR_TOLERANCE}: the last decimal place`,
        }),
        lengthAnswer(
          "True length of the hip",
          lengthIn,
          measuring,
          mistakesOf(LENGTH, facts),
          factorAllowance(runIn, setting),
        ),
        ...(level === "full roof"
          ? [degreesAnswer("Angle on the face, eave to hip", angle, mistakesOf(ANGLE, facts))]
          : []),
      ],
      steps: [
        step(
          `${writePitch(rise)}: √(2 + ${plain(rise / PITCH_RUN)}²) = ${factor.toFixed(3)}.`,
          call(hipFactorSpec, pitch),
          factor,
        ),
        lengthStep(
          `${write(runIn)} × ${factor.toFixed(3)} = ${write(lengthIn)}.`,
          call(hipLengthSpec, quoted(write(runIn)), pitch),
          lengthIn,
          measuring,
        ),
        ...(level === "full roof"
          ? [
              step(
                `The angle whose tangent is the rafter factor, ${rafterFactor(rise).toFixed(3)}: ${angle.toFixed(1)}°.`,
                call(faceAngleSpec, pitch),
                angle,
              ),
            ]
          : []),
      ],
    };
  },
} as const satisfies Topic<HipFacts>;
