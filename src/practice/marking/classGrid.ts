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
  /** What went wrong where it can be named, the commonest first: a student's slip counts once, however often it comes. */
  readonly slips: readonly { readonly slip: string; readonly students: number }[];
  readonly teachAgain: string;
}

export interface ClassGrid {
  /** Which class it is, in words; each, where several were marked together. */
  readonly classes: readonly string[];
  readonly topics: readonly TopicResult[];
  /** A row a student, a column a topic: the share that is right; undefined where nothing was asked. */
  readonly rows: readonly {
    readonly student: MarkedStudent;
    readonly shares: readonly (number | undefined)[];
    /** Of all answers. */
    readonly shareRight: number | undefined;
  }[];
  /** Of all topics and students. */
  readonly counts: TopicResult["counts"];
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

const answersOf = ({ answers }: MarkedStudent, id: TopicId): readonly MarkedAnswer[] =>
  answers.filter(({ topic }) => topic === id);

const slipsOf = (byStudent: readonly (readonly MarkedAnswer[])[]): TopicResult["slips"] => {
  const students = new Map<string, number>();
  for (const answers of byStudent)
    for (const slip of new Set(answers.flatMap((answer) => answer.slip ?? [])))
      students.set(slip, (students.get(slip) ?? 0) + 1);
  return [...students]
    .map(([slip, count]) => ({ slip, students: count }))
    .sort((a, b) => b.students - a.students || a.slip.localeCompare(b.slip));
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
      slips: slipsOf(students.map((student) => answersOf(student, id))),
      teachAgain: TOPICS[id].teachAgain,
    };
  });
  return {
    classes: [...new Set(students.map(({ ofClass }) => ofClass))],
    topics,
    rows: students.map((student) => ({
      student,
      shares: asked.map((id) => shareRight(answersOf(student, id))),
      shareRight: shareRight(student.answers),
    })),
    counts: countsOf(all),
    toTeachAgain: topics
      .filter((topic) => topic.shareRight < ENOUGH)
      .sort((a, b) => a.shareRight - b.shareRight),
  };
};
