import type { Topic } from "../topic";
import { changeOrderTopic } from "./changeOrder";
import { coursesTopic } from "./courses";
import { fastenersTopic } from "./fasteners";
import { gablesTopic } from "./gables";
import { hipsTopic } from "./hips";
import { orderTopic } from "./order";
import { pitchTopic } from "./pitch";
import { rafterTopic } from "./rafter";
import { startersTopic } from "./starters";
import { tapeTopic } from "./tape";
import { trimTopic } from "./trim";
import { underlaymentTopic } from "./underlayment";

/** Every topic. Add new ones at the end: sheets already handed out name a topic by its number in this list. */
const LIST = [
  tapeTopic,
  pitchTopic,
  rafterTopic,
  coursesTopic,
  startersTopic,
  gablesTopic,
  hipsTopic,
  trimTopic,
  fastenersTopic,
  underlaymentTopic,
  orderTopic,
  changeOrderTopic,
] as const;

export type TopicId = (typeof LIST)[number]["id"];

/** A topic that keeps to the measurements it drew itself. */
export type ListedTopic = Topic & { readonly id: TopicId };

export const TOPICS: readonly ListedTopic[] = LIST;
export const TOPIC_IDS: readonly TopicId[] = TOPICS.map(({ id }) => id);

const BY_ID = new Map(TOPICS.map((topic) => [topic.id, topic]));

export const topicOf = (id: TopicId): ListedTopic => BY_ID.get(id) as ListedTopic;
