import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { readLengthText } from "../../../shared/lengthText";
import type { Problem } from "../../../src/practice/problem";
import { classOf } from "../../support/practiceClass";
import { straightAnswer } from "./straightFormulas";

jest.setTimeout(120_000);

const SEEDS = 1000;

/** What an answer may be, written here once more and not taken from the generator. */
const RANGES: Readonly<Record<string, readonly [number, number]>> = {
  length: [1, 300 * 12],
  pitch: [2, 12],
  degrees: [9, 60],
  number: [0.3, 105],
  count: [2, 4000],
  area: [40, 10_000],
  money: [1, 50_000],
};

describe.each(UNITS.flatMap((units) => LEVELS.map((level) => [level, units] as const)))(
  "a thousand classes of the level %s, %s",
  (level, units) => {
    let problems: readonly Problem[] = [];
    beforeAll(() => {
      problems = Array.from({ length: SEEDS }, (_, seed) => classOf(seed, level, units)).flat();
    });

    it("have each answer as straight formulas give it", () => {
      for (const { topic, facts, solution } of problems)
        for (const { field, value } of solution.answers) {
          const straight = straightAnswer(topic, facts, field.label);
          const isSame =
            typeof straight === "string" || typeof value === "string"
              ? value === straight
              : Math.abs(value - straight) <= 1e-7 * Math.max(1, Math.abs(straight));
          if (!isSame)
            throw new Error(
              `${topic}, ${field.label}: ${value} against ${straight}, ${JSON.stringify(facts)}`,
            );
        }
    });

    it("have answers in range, and none that a sixteenth more or less would change", () => {
      for (const { topic, solution } of problems)
        for (const { field, value, leeway = 1 } of solution.answers) {
          const [least, most] = RANGES[field.kind] ?? [-Infinity, Infinity];
          if (typeof value === "number" && !(value >= least && value <= most))
            throw new Error(`${topic}, ${field.label}: ${value}`);
          if (!(leeway >= 0.1)) throw new Error(`${topic}, ${field.label}: hinges on a rounding edge`);
        }
    });

    it("tell measures that a tape shows", () => {
      for (const { question } of problems)
        for (const { text } of question.givens)
          for (const part of text.split(" × ")) {
            const reading = readLengthText(part);
            if (!reading || !("inches" in reading)) continue;
            const marks = units === "metric" ? reading.inches * 25.4 : reading.inches * 16;
            if (!(Math.abs(marks - Math.round(marks)) < 1e-6)) throw new Error(`${part} is on no mark`);
          }
    });

    it("know slips that lead elsewhere than to the right answer", () => {
      for (const { solution } of problems)
        for (const { value, tolerance, mistakes } of solution.answers)
          for (const mistake of mistakes)
            if (!(Math.abs(mistake.value - Number(value)) > tolerance))
              throw new Error(`${mistake.slip} comes to the right answer`);
    });

    it("lead to every answer in worked steps, and show it in words", () => {
      for (const { topic, solution } of problems) {
        const words = solution.steps.map((step) => step.words).join(" ");
        for (const { shown, field } of solution.answers) {
          const said = field.kind === "word" ? (shown === "steep" ? "is over" : "is not over") : shown;
          if (!words.replaceAll("−", "-").includes(said))
            throw new Error(`${topic}: ${said} isn't in ${words}`);
        }
      }
    });

    it("come to the key's panels with the numbers that their steps print", () => {
      const [perUnit, ofSquares] = units === "metric" ? [1, 1] : [144, 100];
      const orders = problems.filter(({ topic }) => topic === "order");
      expect(orders).toHaveLength(SEEDS);
      for (const { solution } of orders) {
        const [area, panels] = solution.answers;
        const words = solution.steps[1]?.words ?? "";
        const [, ofOrder, panelArea] = /([\d.]+)(?: × 144)? ÷ ([\d.]+) = /.exec(words) ?? [];
        const [, panelShown] = /([\d.]+) (?:sq ft|m²);/.exec(words) ?? [];
        // Someone goes on with the area as it was answered, and the panel's as it was written down.
        const areaShown = parseFloat(area?.shown ?? "") * ofSquares;
        const counts = [
          Math.ceil((Number(ofOrder) * perUnit) / Number(panelArea)),
          Math.ceil(areaShown / Number(panelShown) - 1e-9),
        ];
        if (counts.some((count) => count !== panels?.value))
          throw new Error(`${words} ${counts.join(" and ")} against ${panels?.value}`);
      }
    });
  },
);
