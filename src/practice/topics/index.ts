import type { Facts, Topic } from "../problem";
import type { TopicId } from "../topicTitles";
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

/** A topic among others: it makes its own measures, and takes no other's. */
const listed = <F extends Facts>(topic: Topic<F>): Topic => topic as unknown as Topic;

/** How each topic's problems are made. */
export const TOPICS: Readonly<Record<TopicId, Topic>> = {
  tape: listed(tapeTopic),
  pitch: listed(pitchTopic),
  rafter: listed(rafterTopic),
  courses: listed(coursesTopic),
  starters: listed(startersTopic),
  gables: listed(gablesTopic),
  hips: listed(hipsTopic),
  trim: listed(trimTopic),
  fasteners: listed(fastenersTopic),
  underlayment: listed(underlaymentTopic),
  order: listed(orderTopic),
  "change order": listed(changeOrderTopic),
};
