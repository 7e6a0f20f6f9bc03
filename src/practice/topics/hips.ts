import { faceAngle, faceAngleSpec } from "../../../functions/slope/faceAngle";
import { hipFactor, hipFactorSpec } from "../../../functions/slope/hipFactor";
import { hipLength, hipLengthSpec } from "../../../functions/slope/hipLength";
import { rafterFactor } from "../../../functions/slope/rafterFactor";
import { PITCH_RUN } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { degreesAnswer, lengthAnswer, mistakesOf, numberAnswer, type Slips } from "../answers";
import { hipPlanFigure } from "../figures/planFigures";
import type { Topic } from "../problem";
import { lengthStep, plain, quoted, step } from "../steps";
import { factorAllowance } from "./rafter";

export type HipFacts = { readonly runIn: number; readonly rise: number };

const FACTOR_TOLERANCE = 0.001;
const RIGHT_ANGLE = 90;
const ON_PLAN = 45;

const FACTOR: Slips<HipFacts> = {
  "took the rafter factor": ({ rise }) => rafterFactor(rise),
  "took the hip on plan": () => Math.SQRT2,
  "left out the root": ({ rise }) => hipFactor(rise) ** 2,
};

const LENGTH: Slips<HipFacts> = {
  "took the rafter factor": ({ runIn, rise }) => runIn * rafterFactor(rise),
  "took the hip on plan": ({ runIn }) => runIn * Math.SQRT2,
  "took the hip's own run for the common run": ({ runIn, rise }) => runIn * Math.SQRT2 * hipFactor(rise),
};

const ANGLE: Slips<HipFacts> = {
  "took the angle on plan": () => ON_PLAN,
  "measured from the ridge's side": ({ rise }) => RIGHT_ANGLE - faceAngle(rise),
};

export const hipsTopic: Topic<HipFacts> = {
  id: "hips",
  teachAgain:
    "Stand a stick along a hip of the folded card: seen from above it runs at 45°, on the face it doesn't, and it is longer than a rafter.",
  draw: (random, { measuring }) => ({
    runIn: measuring.drawLengthIn(random, 6, 16),
    rise: measuring.drawRise(random),
  }),
  ask: ({ runIn, rise }, { level, measuring }) => ({
    words:
      "Two slopes of the same pitch meet in a hip at a square corner; a valley is worked out alike. The common run was measured level, square to the eave. Find the hip factor, and the true length of the hip." +
      (level === "full roof"
        ? " Find also the angle on the sloped face between eave and hip, at which panels are cut."
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
          why: `${FACTOR_TOLERANCE}: the last decimal`,
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
};
