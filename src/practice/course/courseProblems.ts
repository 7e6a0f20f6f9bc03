import { randomOf } from "../../../functions/practice/random";
import type { Problem } from "../problems/problem";
import { isSuitable } from "../problems/suitable";
import type { Setting } from "../topic";
import { drawCourseRoof, isSuitableForCourse } from "./courseRoof";
import { COURSE_SESSIONS, type CourseSession } from "./courseSessions";

/** Every session's problems must be suitable, so few roofs are. */
const MAX_DRAWS = 5_000;

const withIntro = (problem: Problem, { intro }: CourseSession): Problem => ({
  ...problem,
  question: { ...problem.question, text: `${intro} ${problem.question.text}` },
});

/** The full-day course's problems, session by session, all on one roof. */
export const drawCourse = (seed: string, setting: Setting): readonly (readonly Problem[])[] => {
  const random = randomOf(seed);
  for (let draws = 0; draws < MAX_DRAWS; draws++) {
    const roof = drawCourseRoof(random, setting);
    if (!isSuitableForCourse(roof, setting)) continue;
    const sessions = COURSE_SESSIONS.map((session) =>
      session.problems(roof, setting, random).map((problem) => withIntro(problem, session)),
    );
    if (sessions.flat().every(({ solution }) => isSuitable(solution))) return sessions;
  }
  throw new Error(`no suitable roof for a full-day course in ${MAX_DRAWS} draws, seed ${seed}`);
};
