import { measuringOf } from "../../../../functions/practice/measuring";
import { MM_PER_INCH } from "../../../../shared/units";
import type { Figure } from "../../../../src/pictures/figure";
import { tapeFigure } from "../../../../src/practice/figures/tapeFigure";

/** Its lines from the top of the tape: the marks in order, then the pointer's. */
const linesOf = ({ marks }: Figure): { x: number; end: number }[] =>
  marks.flatMap((mark) => {
    const [from, to] = mark.kind === "line" ? mark.points : [];
    return from && to ? [{ x: from.x, end: to.y }] : [];
  });

const numbersOf = ({ marks }: Figure): { text: string; x: number; y: number }[] =>
  marks.flatMap((mark) => (mark.kind === "label" ? [{ text: mark.text, ...mark.at }] : []));

const inches = (readingIn: number, readToIn: number): Figure =>
  tapeFigure(readingIn, readToIn, measuringOf("feet and inches", "half day"));
const mm = (readingMm: number, readToMm: number): Figure =>
  tapeFigure(readingMm / MM_PER_INCH, readToMm / MM_PER_INCH, measuringOf("metric", "half day"));

describe("the picture of a tape", () => {
  it.each([
    ["every inch", inches(100, 1), 1],
    ["every quarter of an inch", inches(100, 1 / 4), 4],
    ["every sixteenth", inches(100, 1 / 16), 16],
    ["every centimeter", mm(3_000, 10), 1],
    ["every 5 mm", mm(3_000, 5), 2],
    ["every millimeter", mm(3_000, 1), 10],
  ])("has a mark for %s, and none in between", (_, figure, marksForANumber) => {
    const marks = linesOf(figure).slice(0, -1);
    const [first, second] = numbersOf(figure);
    const between = marks.filter(({ x }) => x >= (first?.x ?? NaN) && x < (second?.x ?? NaN));
    expect(between).toHaveLength(marksForANumber);
  });

  it("has its pointer at the reading's mark, and its line never crosses a number", () => {
    const atNumber = inches(100, 1 / 4);
    const number = numbersOf(atNumber).find(({ text }) => text === "4");
    const line = linesOf(atNumber).at(-1);
    expect(line?.x).toBe(number?.x);
    expect(line?.end).toBeLessThan(number?.y ?? NaN);
    const beside = linesOf(inches(100.25, 1 / 4)).at(-1);
    expect(beside?.end).toBeGreaterThan(number?.y ?? NaN);
  });
});
