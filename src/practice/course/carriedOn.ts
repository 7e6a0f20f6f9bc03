import type { Figure } from "../../pictures/figure";
import type { Problem } from "../problem";
import type { TopicId } from "../topicTitles";

/** A measure that an earlier problem of the day asks for: its page is named, for told it would give the answer away. */
interface Carried {
  readonly label: string;
  readonly from: TopicId;
  /** What stands in place of what would be told; `problem` as `problem 3`. */
  readonly write: (problem: string, told: string) => string;
}

const asFound = (problem: string): string => `as found in ${problem}`;

const slope: Carried = { label: "Slope, eave to ridge", from: "rafter", write: asFound };

/** A rise that was measured gives a pitch to a hair; the roof was drawn with a round one. */
const pitch = (label: string): Carried => ({
  label,
  from: "pitch",
  write: (problem, told) => `${asFound(problem)}, to the nearest ${told.endsWith("°") ? "degree" : "half"}`,
});

const CARRIED: Partial<Record<TopicId, readonly Carried[]>> = {
  rafter: [
    // What the tape reads is as long as that.
    { label: "Run, level", from: "pitch", write: (problem) => `half of the span of ${problem}` },
    pitch("Pitch"),
  ],
  gables: [{ label: "Building, along the ridge", from: "tape", write: asFound }, pitch("Pitch")],
  hips: [pitch("Pitch of both slopes")],
  courses: [slope],
  starters: [{ label: "Courses up the gable", from: "courses", write: asFound }],
  underlayment: [slope],
  order: [
    {
      label: "Area on the slope",
      from: "gables",
      write: (problem, told) => `${asFound(problem)}, to a whole ${told.slice(told.indexOf(" ") + 1)}`,
    },
  ],
  "change order": [
    {
      label: "Packs of panels",
      from: "order",
      write: (problem, told) => told.replace(/^before \d+/, `before ${asFound(problem)}`),
    },
  ],
};

const GO_ON = "Where another problem is named, go on with the right answer there, of your own version.";

const withWords = (figure: Figure, instead: ReadonlyMap<string, string>): Figure => ({
  ...figure,
  marks: figure.marks.map((mark) =>
    mark.kind === "label" ? { ...mark, text: instead.get(mark.text) ?? mark.text } : mark,
  ),
});

/** A day's problems as they are given out: what an earlier page asks for no later one tells, in words or in its figure. */
export const carriedOn = (problems: readonly Problem[]): Problem[] =>
  problems.map((problem) => {
    const carried = CARRIED[problem.topic];
    if (!carried) return problem;
    const { question } = problem;
    const inFigure = new Map<string, string>();
    const givens = question.givens.map(({ label, text }) => {
      const source = carried.find((each) => each.label === label);
      if (!source) return { label, text };
      const page = `problem ${problems.findIndex(({ topic }) => topic === source.from) + 1}`;
      inFigure.set(text, page);
      return { label, text: source.write(page, text) };
    });
    return {
      ...problem,
      question: {
        ...question,
        words: `${question.words} ${GO_ON}`,
        givens,
        ...(question.figure && { figure: withWords(question.figure, inFigure) }),
      },
    };
  });
