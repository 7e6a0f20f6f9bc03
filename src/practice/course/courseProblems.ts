import { randomOf } from "../../../functions/practice/random";
import { isHumane } from "../suitable";
import type { Problem, Setting } from "../problem";
import { drawDayRoof, isFitForDay } from "./dayRoof";
import { SESSIONS, type Session } from "./sessions";

/** Every session must like the roof: few will do. */
const MOST_DRAWS = 5_000;

const withStory = (problem: Problem, { story }: Session): Problem => ({
  ...problem,
  question: { ...problem.question, words: `${story} ${problem.question.words}` },
});

/** A day's problems, session by session, all of one roof. */
export const courseSessions = (seed: string, setting: Setting): readonly (readonly Problem[])[] => {
  const random = randomOf(seed);
  for (let draws = 0; draws < MOST_DRAWS; draws++) {
    const roof = drawDayRoof(random, setting);
    if (!isFitForDay(roof, setting)) continue;
    const sessions = SESSIONS.map((session) =>
      session.problems(roof, setting, random).map((problem) => withStory(problem, session)),
    );
    if (sessions.flat().every(({ solution }) => isHumane(solution))) return sessions;
  }
  throw new Error(`no roof for a day's course, seed ${seed}`);
};
