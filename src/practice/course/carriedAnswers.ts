import type { Figure } from "../../pictures/figure";
import type { Problem } from "../problems/problem";
import type { TopicId } from "../topics/index";

/** A given that an earlier problem of the course asks for: the page names that problem, since the value would give its answer away. */
interface Carried {
  readonly label: string;
  readonly from: TopicId;
  /** The text printed instead of `given`; `problem` is `problem 3`. */
  readonly write: (problem: string, given: string) => string;
}

const answerTo = (problem: string): string => `answer to ${problem}`;

const slope: Carried = { label: "Slope, eave to ridge", from: "rafter", write: answerTo };

/** A measured rise gives an uneven pitch; the roof was drawn with an even one. */
const pitch = (label: string): Carried => ({
  label,
  from: "pitch",
  write: (problem, given) =>
    `${answerTo(problem)}, rounded to the nearest ${given.endsWith("°") ? "degree" : "half"}`,
});

const CARRIED: Partial<Record<TopicId, readonly Carried[]>> = {
  rafter: [
    // The tape problem's reading is the same length.
    { label: "Run, level", from: "pitch", write: (problem) => `half the span in ${problem}` },
    pitch("Pitch"),
  ],
  gables: [{ label: "Building, along the ridge", from: "tape", write: answerTo }, pitch("Pitch")],
  hips: [pitch("Pitch of both slopes")],
  courses: [slope],
  starters: [{ label: "Courses up the gable", from: "courses", write: answerTo }],
  underlayment: [slope],
  order: [
    {
      label: "Area on the slope",
      from: "gables",
      write: (problem, given) =>
        `${answerTo(problem)}, rounded to a whole ${given.slice(given.indexOf(" ") + 1)}`,
    },
  ],
  "change order": [
    {
      label: "Packs of panels",
      from: "order",
      write: (problem, given) => given.replace(/^before \d+/, `before as in ${problem}`),
    },
  ],
};

const USE_EARLIER_ANSWERS = "Where another problem is named, use its right answer, from your own version.";

const replaceFigureText = (figure: Figure, replacements: ReadonlyMap<string, string>): Figure => ({
  ...figure,
  marks: figure.marks.map((mark) =>
    mark.kind === "label" ? { ...mark, text: replacements.get(mark.text) ?? mark.text } : mark,
  ),
});

/** A course's problems as handed out: no page gives, in text or figure, what an earlier page asks for. */
export const carryAnswers = (problems: readonly Problem[]): Problem[] =>
  problems.map((problem) => {
    const carried = CARRIED[problem.topic];
    if (!carried) return problem;
    const { question } = problem;
    const replacements = new Map<string, string>();
    const givens = question.givens.map(({ label, text }) => {
      const source = carried.find((each) => each.label === label);
      if (!source) return { label, text };
      const page = `problem ${problems.findIndex(({ topic }) => topic === source.from) + 1}`;
      replacements.set(text, page);
      return { label, text: source.write(page, text) };
    });
    return {
      ...problem,
      question: {
        ...question,
        text: `${question.text} ${USE_EARLIER_ANSWERS}`,
        givens,
        ...(question.figure && { figure: replaceFigureText(question.figure, replacements) }),
      },
    };
  });
