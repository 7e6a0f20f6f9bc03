import { courseLineSpec } from "../../../functions/courses/courseLine";
import { courses, coursesSpec } from "../../../functions/courses/courses";
import { topCourse, topCourseSpec } from "../../../functions/courses/topCourse";
import { inchesToFeet } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { countAnswer, lengthAnswer, mistakesOf, smallLengthAnswer, type Slips } from "../answers";
import { planeFigure } from "../figures/planeFigure";
import type { Topic } from "../problem";
import { lengthStep, plain, quoted, smallLengthStep, step } from "../steps";

/** `course` is the one whose chalk line is asked for; 0: none is. */
export type CoursesFacts = { readonly slopeIn: number; readonly exposureIn: number; readonly course: number };

const countOf = ({ slopeIn, exposureIn }: CoursesFacts): number => courses(inchesToFeet(slopeIn), exposureIn);
const topOf = ({ slopeIn, exposureIn }: CoursesFacts): number => topCourse(inchesToFeet(slopeIn), exposureIn);

const COUNT: Slips<CoursesFacts> = {
  "counted the starter strip for a course": (facts) => countOf(facts) + 1,
};

/** With a tape in feet and inches. */
const COUNT_IN_INCHES: Slips<CoursesFacts> = {
  ...COUNT,
  "took feet for inches": ({ slopeIn, exposureIn }) => Math.ceil(inchesToFeet(slopeIn) / exposureIn),
};

const TOP: Slips<CoursesFacts> = {
  "gave what is cut off": (facts) => facts.exposureIn - topOf(facts),
  "took a whole course": ({ exposureIn }) => exposureIn,
};

const LINE: Slips<CoursesFacts> = {
  "counted the course itself": ({ course, exposureIn }) => course * exposureIn,
  "counted from the second course": ({ course, exposureIn }) => (course - 2) * exposureIn,
};

export const coursesTopic: Topic<CoursesFacts> = {
  id: "courses",
  teachAgain:
    "Walk the tape up a slope drawn on the board: the first course stands on the eave, and a course that is begun is counted.",
  draw: (random, { level, measuring }) => ({
    slopeIn: measuring.drawLengthIn(random, 8, 24),
    exposureIn: measuring.pickIn(random, [12, 10, 9], [300, 250, 225]),
    course: level === "first hour" ? 0 : random.whole(4, 9),
  }),
  ask: ({ slopeIn, exposureIn, course }, { measuring }) => ({
    words:
      "Courses are laid from the eave up, the last one cut at the ridge. Find how many courses the slope takes, and what of the last one shows." +
      (course === 0
        ? ""
        : ` Find also how far up from the eave the chalk line of course ${course} is snapped.`),
    givens: [
      { label: "Slope, eave to ridge", text: measuring.write(slopeIn) },
      { label: "Height of a course that shows", text: measuring.writeSmall(exposureIn) },
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
        smallLengthAnswer("The last course shows", top, measuring, mistakesOf(TOP, facts)),
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
                `${course - 1} courses stand below it: ${course - 1} × ${writeSmall(exposureIn)} = ${write(lineIn)}.`,
                call(courseLineSpec, String(course), quoted(writeSmall(exposureIn))),
                lineIn,
                measuring,
              ),
            ]),
      ],
    };
  },
};
