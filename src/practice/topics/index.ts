import type { Facts, Topic } from "../problem";
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

/** Every topic, in the order in which a class comes to it. */
export const TOPICS: readonly Topic[] = [
  listed(tapeTopic),
  listed(pitchTopic),
  listed(rafterTopic),
  listed(coursesTopic),
  listed(startersTopic),
  listed(gablesTopic),
  listed(hipsTopic),
  listed(trimTopic),
  listed(fastenersTopic),
  listed(underlaymentTopic),
  listed(orderTopic),
  listed(changeOrderTopic),
];
