import { underlayment, underlaymentSpec } from "../../../functions/deck/underlayment";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { wholeCount } from "../../../shared/rounding";
import { inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { countAnswer } from "../answers/count";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { planeFigure } from "../figures/planeFigure";
import type { Topic } from "../topic";
import { plain, quoted, step } from "../steps";

export type UnderlaymentFacts = {
  readonly eaveIn: number;
  readonly slopeIn: number;
  readonly rollWidthIn: number;
  readonly rollLengthIn: number;
  readonly headLapIn: number;
  readonly endLapIn: number;
  readonly wrapIn: number;
};

const courseQuantity = ({ slopeIn, wrapIn, headLapIn, rollWidthIn }: UnderlaymentFacts): number =>
  (slopeIn + 2 * wrapIn - headLapIn) / (rollWidthIn - headLapIn);
const rollQuantity = (facts: UnderlaymentFacts, courses = wholeCount(courseQuantity(facts))): number =>
  (courses * (facts.eaveIn + 2 * facts.wrapIn) - facts.endLapIn) / (facts.rollLengthIn - facts.endLapIn);

const COURSES: CommonMistakes<UnderlaymentFacts> = {
  "left out the head lap": ({ slopeIn, wrapIn, rollWidthIn }) =>
    Math.ceil((slopeIn + 2 * wrapIn) / rollWidthIn),
};

const ROLLS: CommonMistakes<UnderlaymentFacts> = {
  "left out the head lap": (facts) =>
    Math.ceil(rollQuantity(facts, Math.ceil((facts.slopeIn + 2 * facts.wrapIn) / facts.rollWidthIn))),
  "divided area by area": ({ eaveIn, slopeIn, rollWidthIn, rollLengthIn }) =>
    Math.ceil((eaveIn * slopeIn) / (rollWidthIn * rollLengthIn)),
  "used a roll for each course": (facts) => wholeCount(courseQuantity(facts)),
};

export const underlaymentTopic = {
  id: "underlayment",
  title: "Underlayment",
  reteachTip: "Lap three strips of paper: each course after the first gains the roll width minus one lap.",
  draw: (random, { measuring }) => ({
    eaveIn: measuring.drawLengthIn(random, 24, 60),
    slopeIn: measuring.drawLengthIn(random, 10, 24),
    rollWidthIn: measuring.pickIn(random, [36, 48], [1000, 1500]),
    rollLengthIn: measuring.pickIn(random, [800, 600], [20_000, 25_000]),
    headLapIn: measuring.pickIn(random, [2, 3, 4, 6], [50, 100, 150]),
    endLapIn: measuring.pickIn(random, [4, 6], [100, 150]),
    wrapIn: measuring.pickIn(random, [1, 2], [25, 50]),
  }),
  ask: (
    { eaveIn, slopeIn, rollWidthIn, rollLengthIn, headLapIn, endLapIn, wrapIn },
    { level, measuring },
  ) => {
    const { write, writeSmall } = measuring;
    return {
      text:
        "Underlayment is laid in courses from the eave up, each lapped over the one below, and wraps over every edge of the roof face." +
        (level === "first hour"
          ? " Find how many courses the face takes."
          : " Where a roll ends, the next one laps over it and continues, also into the next course. Find how many courses the face takes, and how many rolls."),
      givens: [
        ...(level === "first hour" ? [] : [{ label: "Eave", text: write(eaveIn) }]),
        { label: "Slope, eave to ridge", text: write(slopeIn) },
        { label: "Roll width", text: writeSmall(rollWidthIn) },
        ...(level === "first hour" ? [] : [{ label: "Roll length", text: write(rollLengthIn) }]),
        { label: "Head lap, between courses", text: writeSmall(headLapIn) },
        ...(level === "first hour" ? [] : [{ label: "End lap, between rolls", text: writeSmall(endLapIn) }]),
        { label: "Wrap over every edge", text: writeSmall(wrapIn) },
      ],
      figure: planeFigure(eaveIn, slopeIn, {
        width: level === "first hour" ? "eave" : write(eaveIn),
        height: write(slopeIn),
      }),
    };
  },
  solve: (facts, { level, measuring }) => {
    const { eaveIn, slopeIn, rollWidthIn, rollLengthIn, headLapIn, endLapIn, wrapIn } = facts;
    const { write, writeSmall } = measuring;
    const [ofCourses, ofRolls] = [courseQuantity(facts), rollQuantity(facts)];
    const courses = wholeCount(ofCourses);
    const rolls = underlayment(
      inchesToFeet(eaveIn),
      inchesToFeet(slopeIn),
      rollWidthIn,
      rollLengthIn,
      headLapIn,
      endLapIn,
      wrapIn,
    );
    const wrapped = (lengthIn: number): string => `(${write(lengthIn)} + 2 × ${writeSmall(wrapIn)})`;
    const small = (lengthIn: number): string => quoted(writeSmall(lengthIn));
    return {
      answers: [
        countAnswer("Courses of underlayment", "courses", ofCourses, mistakesOf(COURSES, facts)),
        ...(level === "first hour" ? [] : [countAnswer("Rolls", "rolls", ofRolls, mistakesOf(ROLLS, facts))]),
      ],
      steps: [
        step(
          `(${write(slopeIn)} + 2 × ${writeSmall(wrapIn)} − ${writeSmall(headLapIn)}) ÷ (${writeSmall(rollWidthIn)} − ${writeSmall(headLapIn)}) = ${plain(ofCourses, 2)}: ${courses} courses. They lap like pieces of trim.`,
          call(trimPiecesSpec, small(slopeIn + 2 * wrapIn), small(rollWidthIn), small(headLapIn)),
          courses,
        ),
        ...(level === "first hour"
          ? []
          : [
              step(
                `(${courses} × ${wrapped(eaveIn)} − ${writeSmall(endLapIn)}) ÷ (${write(rollLengthIn)} − ${writeSmall(endLapIn)}) = ${plain(ofRolls, 2)}: ${rolls} rolls.`,
                call(
                  underlaymentSpec,
                  ...[eaveIn, slopeIn, rollWidthIn, rollLengthIn, headLapIn, endLapIn, wrapIn].map(small),
                ),
                rolls,
              ),
            ]),
      ],
    };
  },
} as const satisfies Topic<UnderlaymentFacts>;
