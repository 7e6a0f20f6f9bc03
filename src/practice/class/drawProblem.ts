import { randomOf } from "../../../functions/practice/random";
import { isHumane } from "../suitable";
import { problemOf, type Facts, type Problem, type Setting, type Topic } from "../problem";

/** Far more than any topic needs: about one draw in three is taken. */
const MOST_DRAWS = 500;

/** The first humane problem that a seed gives. */
export const drawProblem = <F extends Facts>(topic: Topic<F>, seed: string, setting: Setting): Problem => {
  const random = randomOf(seed);
  for (let draws = 0; draws < MOST_DRAWS; draws++) {
    const facts = topic.draw(random, setting);
    if (isHumane(topic.solve(facts, setting))) return problemOf(topic, facts, setting);
  }
  throw new Error(`topic ${topic.id} gave no problem that can be set, seed ${seed}`);
};
