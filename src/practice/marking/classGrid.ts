import { TOPICS, type ListedTopic, type TopicId } from "../topics/index";
import type { Verdict } from "./markAnswer";
import type { MarkedAnswer, MarkedStudent } from "./markStudent";

type Counts = Readonly<Record<Verdict, number>>;

export interface TopicResult {
  readonly topic: ListedTopic;
  readonly counts: Counts;
  readonly fractionRight: number;
  /** The mistakes that marking can name, most common first. Each counts once per student. */
  readonly mistakes: readonly { readonly mistake: string; readonly students: number }[];
}

export interface ClassGrid {
  /** The class line; several if students of several classes were marked together. */
  readonly classes: readonly string[];
  readonly topics: readonly TopicResult[];
  /** One row per student, one column per topic: the fraction right; undefined where nothing was asked. */
  readonly rows: readonly {
    readonly student: MarkedStudent;
    readonly fractionsRight: readonly (number | undefined)[];
    /** Of all the student's answers. */
    readonly fractionRight: number | undefined;
  }[];
  /** Over all topics and students. */
  readonly counts: Counts;
  /** Topics to teach again, the worst first. */
  readonly toReteach: readonly TopicResult[];
}

/** Below this, a topic needs another round. */
const ENOUGH_RIGHT = 2 / 3;

const countsOf = (answers: readonly MarkedAnswer[]): Counts => {
  const of = (verdict: Verdict): number => answers.filter((answer) => answer.verdict === verdict).length;
  return { right: of("right"), near: of("near"), wrong: of("wrong"), blank: of("blank") };
};

const fractionRight = (answers: readonly MarkedAnswer[]): number | undefined =>
  answers.length === 0 ? undefined : countsOf(answers).right / answers.length;

const answersOf = ({ answers }: MarkedStudent, id: TopicId): readonly MarkedAnswer[] =>
  answers.filter(({ topic }) => topic === id);

const countMistakes = (byStudent: readonly (readonly MarkedAnswer[])[]): TopicResult["mistakes"] => {
  const students = new Map<string, number>();
  for (const answers of byStudent)
    for (const mistake of new Set(answers.flatMap((answer) => answer.mistake ?? [])))
      students.set(mistake, (students.get(mistake) ?? 0) + 1);
  return [...students]
    .map(([mistake, count]) => ({ mistake, students: count }))
    .sort((a, b) => b.students - a.students || a.mistake.localeCompare(b.mistake));
};

/** The class's results by topic, and what to teach again. */
export const classGrid = (students: readonly MarkedStudent[]): ClassGrid => {
  const all = students.flatMap(({ answers }) => answers);
  const asked = TOPICS.filter(({ id }) => all.some(({ topic }) => topic === id));
  const topics = asked.map((topic): TopicResult => {
    const byStudent = students.map((student) => answersOf(student, topic.id));
    return {
      topic,
      counts: countsOf(byStudent.flat()),
      fractionRight: fractionRight(byStudent.flat()) ?? 0,
      mistakes: countMistakes(byStudent),
    };
  });
  return {
    classes: [...new Set(students.map(({ classLine }) => classLine))],
    topics,
    rows: students.map((student) => ({
      student,
      fractionsRight: asked.map(({ id }) => fractionRight(answersOf(student, id))),
      fractionRight: fractionRight(student.answers),
    })),
    counts: countsOf(all),
    toReteach: topics
      .filter((topic) => topic.fractionRight < ENOUGH_RIGHT)
      .sort((a, b) => a.fractionRight - b.fractionRight),
  };
};
