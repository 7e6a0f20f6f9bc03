import { randomOf } from "../../../functions/practice/random";
import type { Setting } from "../topic";
import { topicOf, type TopicId } from "../topics/index";
import { problemOf, type Problem } from "./problem";
import { isSuitable } from "./suitable";

/** Far more than any topic needs: about one draw in three is suitable. */
const MAX_DRAWS = 500;

/** The first suitable problem that a seed gives. */
export const drawProblem = (id: TopicId, seed: string, setting: Setting): Problem => {
  const topic = topicOf(id);
  const random = randomOf(seed);
  for (let draws = 0; draws < MAX_DRAWS; draws++) {
    const facts = topic.draw(random, setting);
    if (isSuitable(topic.solve(facts, setting))) return problemOf(topic, facts, setting);
  }
  throw new Error(`topic ${id}: no suitable problem in ${MAX_DRAWS} draws, seed ${seed}`);
};
