import { TOPICS } from "../topics/index";
import { TOPIC_IDS, TOPIC_TITLES, type TopicId } from "../topicTitles";
import type { Verdict } from "./markAnswer";
import type { MarkedAnswer, MarkedStudent } from "./student";

export interface TopicResult {
  readonly id: TopicId;
  readonly title: string;
  readonly counts: Readonly<Record<Verdict, number>>;
  /** Right ones among those asked. */
  readonly shareRight: number;
  /** The slips that led to near answers, the commonest first. */
  readonly slips: readonly { readonly slip: string; readonly times: number }[];
  readonly teachAgain: string;
}

export interface ClassGrid {
  readonly topics: readonly TopicResult[];
  /** A row a student, a column a topic: the share that is right; undefined where nothing was asked. */
  readonly rows: readonly {
    readonly student: MarkedStudent;
    readonly shares: readonly (number | undefined)[];
  }[];
  /** Topics of which too little is right, the worst first. */
  readonly toTeachAgain: readonly TopicResult[];
}

/** Less than this, and a topic is worth another round. */
const ENOUGH = 2 / 3;

const countsOf = (answers: readonly MarkedAnswer[]): Readonly<Record<Verdict, number>> => {
  const of = (verdict: Verdict): number => answers.filter((answer) => answer.verdict === verdict).length;
  return { right: of("right"), near: of("near"), wrong: of("wrong"), blank: of("blank") };
};

const shareRight = (answers: readonly MarkedAnswer[]): number | undefined =>
  answers.length === 0 ? undefined : countsOf(answers).right / answers.length;

const slipsOf = (answers: readonly MarkedAnswer[]): TopicResult["slips"] => {
  const times = new Map<string, number>();
  for (const { slip } of answers) if (slip !== undefined) times.set(slip, (times.get(slip) ?? 0) + 1);
  return [...times]
    .map(([slip, count]) => ({ slip, times: count }))
    .sort((a, b) => b.times - a.times || a.slip.localeCompare(b.slip));
};

/** The class by topic, and what to teach again. */
export const classGrid = (students: readonly MarkedStudent[]): ClassGrid => {
  const all = students.flatMap(({ answers }) => answers);
  const asked = TOPIC_IDS.filter((id) => all.some(({ topic }) => topic === id));
  const topics = asked.map((id): TopicResult => {
    const answers = all.filter(({ topic }) => topic === id);
    return {
      id,
      title: TOPIC_TITLES[id],
      counts: countsOf(answers),
      shareRight: shareRight(answers) ?? 0,
      slips: slipsOf(answers),
      teachAgain: TOPICS[id].teachAgain,
    };
  });
  return {
    topics,
    rows: students.map((student) => ({
      student,
      shares: asked.map((id) => shareRight(student.answers.filter(({ topic }) => topic === id))),
    })),
    toTeachAgain: topics
      .filter((topic) => topic.shareRight < ENOUGH)
      .sort((a, b) => a.shareRight - b.shareRight),
  };
};
