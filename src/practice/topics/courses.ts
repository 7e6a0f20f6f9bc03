import { courseLineSpec } from "../../../functions/courses/courseLine";
import { courses, coursesSpec } from "../../../functions/courses/courses";
import { topCourse, topCourseSpec } from "../../../functions/courses/topCourse";
import { inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { countAnswer } from "../answers/count";
import { lengthAnswer, smallLengthAnswer } from "../answers/length";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { planeFigure } from "../figures/planeFigure";
import type { Topic } from "../topic";
import { lengthStep, plain, quoted, smallLengthStep, step } from "../steps";

/** `course` is the one whose chalk line is asked for; 0 if none is. */
export type CoursesFacts = { readonly slopeIn: number; readonly exposureIn: number; readonly course: number };

const countOf = ({ slopeIn, exposureIn }: CoursesFacts): number => courses(inchesToFeet(slopeIn), exposureIn);
const topOf = ({ slopeIn, exposureIn }: CoursesFacts): number => topCourse(inchesToFeet(slopeIn), exposureIn);

const COUNT: CommonMistakes<CoursesFacts> = {
  "counted the starter strip as a course": (facts) => countOf(facts) + 1,
};

/** Only in feet and inches. */
const COUNT_IN_INCHES: CommonMistakes<CoursesFacts> = {
  ...COUNT,
  "used feet for inches": ({ slopeIn, exposureIn }) => Math.ceil(inchesToFeet(slopeIn) / exposureIn),
};

const TOP: CommonMistakes<CoursesFacts> = {
  "gave the part cut off": (facts) => facts.exposureIn - topOf(facts),
  "used a whole course": ({ exposureIn }) => exposureIn,
};

const LINE: CommonMistakes<CoursesFacts> = {
  "counted the course itself": ({ course, exposureIn }) => course * exposureIn,
  "counted from the second course": ({ course, exposureIn }) => (course - 2) * exposureIn,
};

export const coursesTopic = {
  id: "courses",
  title: "Courses",
  reteachTip:
    "Walk the tape up a slope drawn on the board: the first course starts at the eave, and a partial course counts as one.",
  draw: (random, { level, measuring }) => ({
    slopeIn: measuring.drawLengthIn(random, 8, 24),
    exposureIn: measuring.pickIn(random, [12, 10, 9], [300, 250, 225]),
    course: level === "first hour" ? 0 : random.whole(4, 9),
  }),
  ask: ({ slopeIn, exposureIn, course }, { measuring }) => ({
    text:
      "Courses are laid from the eave up; the last one is cut at the ridge. Find how many courses the slope takes, and how much of the last course shows." +
      (course === 0 ? "" : ` Also find how far up from the eave to snap the chalk line of course ${course}.`),
    givens: [
      { label: "Slope, eave to ridge", text: measuring.write(slopeIn) },
      { label: "Course exposure", text: measuring.writeSmall(exposureIn) },
    ],
    figure: planeFigure(slopeIn * 1.5, slopeIn, { width: "eave", height: measuring.write(slopeIn) }),
  }),
  solve: (facts, { measuring }) => {
    const { slopeIn, exposureIn, course } = facts;
    const { write, writeSmall } = measuring;
    const quantity = slopeIn / exposureIn;
    const [count, top] = [countOf(facts), topOf(facts)];
    const lineIn = (course - 1) * exposureIn;
    const args = [quoted(write(slopeIn)), quoted(writeSmall(exposureIn))];
    return {
      answers: [
        countAnswer(
          "Courses",
          "courses",
          quantity,
          mistakesOf(measuring.units === "metric" ? COUNT : COUNT_IN_INCHES, facts),
        ),
        smallLengthAnswer("Exposure of the last course", top, measuring, mistakesOf(TOP, facts)),
        ...(course === 0
          ? []
          : [lengthAnswer(`Chalk line of course ${course}`, lineIn, measuring, mistakesOf(LINE, facts))]),
      ],
      steps: [
        step(
          `${measuring.units === "metric" ? write(slopeIn) : `${write(slopeIn)} = ${writeSmall(slopeIn)}`}; ÷ ${writeSmall(exposureIn)} = ${plain(quantity, 2)}: ${count} courses.`,
          call(coursesSpec, ...args),
          count,
        ),
        smallLengthStep(
          `${count - 1} whole courses are ${writeSmall((count - 1) * exposureIn)}; ${writeSmall(slopeIn)} − ${writeSmall((count - 1) * exposureIn)} = ${writeSmall(top)}.`,
          call(topCourseSpec, ...args),
          top,
          measuring,
        ),
        ...(course === 0
          ? []
          : [
              lengthStep(
                `${course - 1} courses are below it: ${course - 1} × ${writeSmall(exposureIn)} = ${write(lineIn)}.`,
                call(courseLineSpec, String(course), quoted(writeSmall(exposureIn))),
                lineIn,
                measuring,
              ),
            ]),
      ],
    };
  },
} as const satisfies Topic<CoursesFacts>;
