import { feetSpec } from "../../../functions/measure/feet";
import { pitchAngle, pitchAngleSpec } from "../../../functions/slope/pitchAngle";
import { INCHES_PER_FOOT, MM_PER_INCH, PITCH_RUN, toDegrees } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { choiceAnswer } from "../answers/choice";
import { degreesAnswer, numberAnswer, pitchAnswer } from "../answers/number";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { slopeFigure } from "../figures/slopeFigure";
import type { Answer, Setting, Topic } from "../topic";
import { plain, quoted, step } from "../steps";

/** `isSpanGiven` is 1 where the whole span of a gable is given and has to be halved. */
export type PitchFacts = { readonly runIn: number; readonly riseIn: number; readonly isSpanGiven: number };

const RIGHT_ANGLE = 90;
/** 29 CFR 1926.500(b): steep above 4 in 12. */
const STEEP_ABOVE = 4;
const STEEP_LIMIT = { "feet and inches": "4 in 12", metric: "18.4° (4 in 12)" } as const;
const MM_STEP = 100;
const PERCENT_TOLERANCE = 1;

const riseIn12 = ({ runIn, riseIn }: PitchFacts): number => (riseIn / runIn) * PITCH_RUN;

/** The slope as a rise in 12. */
const SLOPE: CommonMistakes<PitchFacts> = {
  "used run over rise": ({ runIn, riseIn }) => (runIn / riseIn) * PITCH_RUN,
  "used the whole span as the run": (facts) => (facts.isSpanGiven ? riseIn12(facts) / 2 : undefined),
};

const ANGLE: CommonMistakes<PitchFacts> = {
  "used the sine, not the tangent": ({ runIn, riseIn }) =>
    riseIn < runIn ? toDegrees(Math.asin(riseIn / runIn)) : undefined,
  "measured from plumb": (facts) => RIGHT_ANGLE - pitchAngle(riseIn12(facts)),
  "used the whole span as the run": (facts) =>
    facts.isSpanGiven ? pitchAngle(riseIn12(facts) / 2) : undefined,
};

const steepness = (facts: PitchFacts, { measuring }: Setting): Answer => {
  const rise = riseIn12(facts);
  return choiceAnswer(
    `Steep is above ${STEEP_LIMIT[measuring.units]}. This roof is`,
    ["steep", "low slope"],
    rise > STEEP_ABOVE ? "steep" : "low slope",
    Math.abs(rise - STEEP_ABOVE) / STEEP_ABOVE,
  );
};

export const pitchTopic = {
  id: "pitch",
  title: "Pitch",
  reteachTip:
    "Hold the level and measure plumb: rise over run. The run goes from the wall to below the ridge; it is never the span.",
  draw: (random, { level, measuring }) => {
    const isSpanGiven = level === "first hour" ? 0 : 1;
    const rise = measuring.drawRise(random);
    if (measuring.units === "feet and inches") {
      const runFt = random.whole(isSpanGiven ? 8 : 2, isSpanGiven ? 16 : 6);
      return { runIn: runFt * INCHES_PER_FOOT, riseIn: runFt * rise, isSpanGiven };
    }
    const runMm = random.whole(isSpanGiven ? 24 : 8, isSpanGiven ? 50 : 20) * MM_STEP;
    return {
      runIn: runMm / MM_PER_INCH,
      riseIn: Math.round((runMm * rise) / PITCH_RUN) / MM_PER_INCH,
      isSpanGiven,
    };
  },
  ask: (facts, { measuring }) => {
    const { runIn, riseIn, isSpanGiven } = facts;
    const { write } = measuring;
    const run = write(isSpanGiven ? 2 * runIn : runIn);
    return {
      text: isSpanGiven
        ? "The ridge of a gable roof is in the middle of the span. The rise was measured plumb, from the top of the wall to the ridge. Find the pitch and the angle."
        : "A level was held against the roof, and the rise was measured plumb at its end. Find the pitch and the angle.",
      givens: [
        { label: isSpanGiven ? "Whole span, wall to wall" : "Level run", text: run },
        { label: "Rise, plumb", text: write(riseIn) },
      ],
      figure: slopeFigure(runIn, riseIn12(facts), {
        run: isSpanGiven ? `half of ${run}` : run,
        rise: write(riseIn),
      }),
    };
  },
  solve: (facts, setting) => {
    const { runIn, riseIn, isSpanGiven } = facts;
    const { level, measuring } = setting;
    const { write } = measuring;
    const rise = riseIn12(facts);
    const angle = pitchAngle(rise);
    const isMetric = measuring.units === "metric";
    const feet = (lengthIn: number): string => call(feetSpec, quoted(write(lengthIn)));
    const run = isSpanGiven ? `${feet(2 * runIn)}/2` : feet(runIn);
    const riseFormula = `${feet(riseIn)}/(${run})*${PITCH_RUN}`;
    const half = isSpanGiven ? `Run: ${write(2 * runIn)} ÷ 2 = ${write(runIn)}. ` : "";
    const percent = (rise / PITCH_RUN) * 100;
    const slope: Answer = isMetric
      ? numberAnswer(
          "Slope in percent",
          percent,
          1,
          mistakesOf(SLOPE, facts).map(({ name, value }) => ({ name, value: (value / PITCH_RUN) * 100 })),
          { unit: "%", tolerance: PERCENT_TOLERANCE, why: "1 %: a tape can't show it any closer" },
        )
      : pitchAnswer("Pitch: rise in 12", rise, measuring, mistakesOf(SLOPE, facts));
    return {
      answers: [
        slope,
        degreesAnswer("Angle above level", angle, mistakesOf(ANGLE, facts)),
        ...(level === "first hour" ? [] : [steepness(facts, setting)]),
      ],
      steps: [
        isMetric
          ? step(
              `${half}${write(riseIn)} ÷ ${write(runIn)} × 100 = ${percent.toFixed(1)} %.`,
              `${feet(riseIn)}/(${run})*100`,
              percent,
            )
          : step(
              `${half}${write(riseIn)} ÷ ${write(runIn)} × 12 = ${plain(rise)}: ${measuring.writePitch(rise)}.`,
              riseFormula,
              rise,
            ),
        step(
          `The angle whose tangent is ${plain(rise / PITCH_RUN)}: ${angle.toFixed(1)}°.`,
          call(pitchAngleSpec, riseFormula),
          angle,
        ),
        ...(level === "first hour"
          ? []
          : [
              step(
                `${isMetric ? `${angle.toFixed(1)}°` : `${plain(rise, 2)} in 12`} is ${rise > STEEP_ABOVE ? "above" : "not above"} ${STEEP_LIMIT[measuring.units]} (29 CFR 1926.500(b)).`,
                `IF(${riseFormula}>${STEEP_ABOVE},"steep","low slope")`,
                rise > STEEP_ABOVE ? "steep" : "low slope",
              ),
            ]),
      ],
    };
  },
} as const satisfies Topic<PitchFacts>;
