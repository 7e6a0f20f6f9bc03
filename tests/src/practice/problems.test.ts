import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { readLengthText } from "../../../shared/lengthText";
import type { Problem } from "../../../src/practice/problems/problem";
import { classOf } from "../../support/practiceClass";
import { secondEngineAnswer } from "./secondEngine";

jest.setTimeout(120_000);

const SEEDS = 1000;

/** Realistic answers by kind, typed again here on purpose. */
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
  "a thousand classes, %s, %s",
  (level, units) => {
    let problems: readonly Problem[] = [];
    beforeAll(() => {
      problems = Array.from({ length: SEEDS }, (_, seed) => classOf(seed, level, units)).flat();
    });

    it("have the answers of the second engine", () => {
      for (const { topic, facts, solution } of problems)
        for (const { field, value } of solution.answers) {
          const straight = secondEngineAnswer(topic, facts, field.label);
          const isSame =
            typeof straight === "string" || typeof value === "string"
              ? value === straight
              : Math.abs(value - straight) <= 1e-7 * Math.max(1, Math.abs(straight));
          if (!isSame)
            throw new Error(`${topic}, ${field.label}: ${value}, not ${straight}, ${JSON.stringify(facts)}`);
        }
    });

    it("have realistic answers that a sixteenth more or less doesn't change", () => {
      for (const { topic, solution } of problems)
        for (const { field, value, roundingMargin = 1 } of solution.answers) {
          const [least, most] = RANGES[field.kind] ?? [-Infinity, Infinity];
          if (typeof value === "number" && !(value >= least && value <= most))
            throw new Error(`${topic}, ${field.label}: ${value}`);
          if (!(roundingMargin >= 0.1))
            throw new Error(`${topic}, ${field.label}: is too close to where rounding changes`);
        }
    });

    it("give measurements that a tape shows", () => {
      for (const { question } of problems)
        for (const { text } of question.givens)
          for (const part of text.split(" × ")) {
            const reading = readLengthText(part);
            if (!reading || !("inches" in reading)) continue;
            const marks = units === "metric" ? reading.inches * 25.4 : reading.inches * 16;
            if (!(Math.abs(marks - Math.round(marks)) < 1e-6)) throw new Error(`${part} isn't at a mark`);
          }
    });

    it("have mistakes that don't give the right answer", () => {
      for (const { solution } of problems)
        for (const { value, tolerance, mistakes } of solution.answers)
          for (const mistake of mistakes)
            if (!(Math.abs(mistake.value - Number(value)) > tolerance))
              throw new Error(`${mistake.name} gives the right answer`);
    });

    it("show every answer in the worked steps", () => {
      for (const { topic, solution } of problems) {
        const text = solution.steps.map((step) => step.text).join(" ");
        for (const { shown, field } of solution.answers) {
          const said = field.kind === "word" ? (shown === "steep" ? "is above" : "is not above") : shown;
          if (!text.replaceAll("−", "-").includes(said))
            throw new Error(`${topic}: ${said} isn't in ${text}`);
        }
      }
    });

    it("give the answer key's panels from the numbers printed in their steps", () => {
      const [perUnit, ofSquares] = units === "metric" ? [1, 1] : [144, 100];
      const orders = problems.filter(({ topic }) => topic === "order");
      expect(orders).toHaveLength(SEEDS);
      for (const { solution } of orders) {
        const [area, panels] = solution.answers;
        const text = solution.steps[1]?.text ?? "";
        const [, ofOrder, panelArea] = /([\d.]+)(?: × 144)? ÷ ([\d.]+) = /.exec(text) ?? [];
        const [, panelShown] = /([\d.]+) (?:sq ft|m²);/.exec(text) ?? [];
        // A student continues with the rounded area and the rounded panel area.
        const areaShown = parseFloat(area?.shown ?? "") * ofSquares;
        const counts = [
          Math.ceil((Number(ofOrder) * perUnit) / Number(panelArea)),
          Math.ceil(areaShown / Number(panelShown) - 1e-9),
        ];
        if (counts.some((count) => count !== panels?.value))
          throw new Error(`${text} ${counts.join(" and ")} not ${panels?.value}`);
      }
    });
  },
);
