import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { CellError, isMatrix, type Answer, type Argument, type Cell } from "../../shared/cell";
import { runFunction } from "../../shared/spec/runner";
import type { FunctionSpec } from "../../shared/spec/spec";
import { catalog } from "../../functions/index";

jest.setTimeout(300_000);

/** So many inputs over the whole catalog, each given at least twice: more than 200,000 calls. */
const INPUTS = 104_000;
/** It lays the roof once for each of hundreds of starts, so it gets fewer inputs and more time. */
const SEARCH = "BESTSTART";
const inputsOf = ({ id }: FunctionSpec): number => (id === SEARCH ? 200 : Math.ceil(INPUTS / catalog.length));
/** Longer than any roof this is meant for, in feet: laying it may also take longer. */
const HUGE_FT = 200;
const isHuge = (spec: FunctionSpec, [outline]: readonly Argument[]): boolean =>
  spec.concept === "layout" &&
  outline !== undefined &&
  isMatrix(outline) &&
  outline.flat().some((cell) => typeof cell === "number" && Math.abs(cell) > HUGE_FT);

/** A call may take so long, at its best, of the processor: other work may run beside it. */
const mostMs = (spec: FunctionSpec, args: readonly Argument[]): number =>
  (spec.id === SEARCH ? 5_000 : 100) * (isHuge(spec, args) ? 10 : 1);
const TRIES = 6;
const leastProcessorMs = (spec: FunctionSpec, args: readonly Argument[]): number => {
  let [best, tries] = [Infinity, 0];
  do {
    const before = process.cpuUsage();
    runFunction(spec, args);
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, (user + system) / 1_000);
  } while (best >= mostMs(spec, args) && ++tries < TRIES);
  return best;
};

const LONGEST_SENTENCE = 600;
const LONG = 100_000;

const numbers = fc.oneof(
  fc.constantFrom(
    ...[
      0,
      -0,
      1,
      -1,
      0.5,
      12,
      60,
      1e-9,
      5e-324,
      1e-300,
      1e15,
      1e300,
      Number.MAX_VALUE,
      Number.MAX_SAFE_INTEGER,
    ],
    ...[NaN, Infinity, -Infinity],
    // What a spreadsheet makes of 6:12, 6/12 and 12-6.
    ...[31 / 120, 46_185, 46_362],
  ),
  fc.double(),
  fc.integer({ min: -100, max: 1_000 }),
  fc.double({ min: 0, max: 100, noNaN: true }),
);

const lengthTexts = fc
  .tuple(
    fc.constantFrom("18", "0", "7.5", "-3", "1e9", "999999999999", "١٨", "１８"),
    fc.constantFrom("'", " ft", "-", '"', "''", "’", " m", "mm", ":", "/", "°", "%", " in 12", ""),
    fc.constantFrom("6", " 6 1/2", "6-1/0", " 1/2", "", ",5", "  "),
    fc.constantFrom('"', "''", " in", "”", "", "'"),
  )
  .map((parts) => parts.join(""));

const longTexts = fc
  .constantFrom(
    "1",
    " ",
    "'",
    '"',
    "1/",
    "1,",
    "5-6,",
    "9 ",
    "a",
    "=",
    "-",
    "0.",
    "1e",
    "ſ",
    "💧",
    "١",
    "\n",
    "x-",
    "(",
  )
  .chain((unit) =>
    fc.constantFrom("", "1", "18' ").map((start) => start + unit.repeat(Math.ceil(LONG / unit.length))),
  );

const texts = fc.oneof(
  { weight: 4, arbitrary: lengthTexts },
  { weight: 2, arbitrary: fc.string({ unit: "grapheme", maxLength: 12 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      ...[
        "",
        " ",
        "\u00a0",
        "\u200b",
        "TRUE",
        "none",
        "rectangle",
        "ridge",
        "hip",
        "steel",
        "6:12",
        "6/12",
        "50%",
        "26.57°",
      ],
      ...[
        "1, 1/2, 3/4, 1/4",
        "5-6, 11-12",
        "__proto__",
        "constructor",
        "=1+1",
        "屋根",
        "سقف",
        "שיפוע", // cspell:disable-line
        "\ud800",
        "1e308 ft",
      ],
    ),
  },
  { weight: 1, arbitrary: longTexts },
);

const cells: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 6, arbitrary: numbers },
  { weight: 4, arbitrary: texts },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 2, arbitrary: fc.constant(null) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(new CellError("#REF!", ""), new CellError("#N/A", "no such plane")),
  },
);

/** Long texts in every cell would be an input of many megabytes. */
const shortCells = cells.filter((cell) => typeof cell !== "string" || cell.length < 100);

const blocks: fc.Arbitrary<Argument> = fc.oneof(
  fc.array(fc.array(shortCells, { maxLength: 4 }), { maxLength: 6 }),
  fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 12 })).chain(([width, height]) =>
    fc.array(fc.array(shortCells, { minLength: width, maxLength: width }), {
      minLength: height,
      maxLength: height,
    }),
  ),
  fc.array(fc.array(numbers, { minLength: 2, maxLength: 2 }), { minLength: 3, maxLength: 9 }),
);

const anyArgument: fc.Arbitrary<Argument> = fc.oneof(
  { weight: 5, arbitrary: cells },
  { weight: 2, arbitrary: blocks },
  { weight: 1, arbitrary: fc.constant(undefined) },
);

/** An example's block with a cell or two changed: near enough to what is taken to get far. */
const nearly = (given: Argument): fc.Arbitrary<Argument> => {
  if (!isMatrix(given) || given.length === 0) return fc.constant(given);
  return fc
    .tuple(fc.nat(given.length - 1), fc.nat(3), shortCells)
    .map(([row, column, cell]) =>
      given.map((line, at) =>
        at === row ? line.map((each, index) => (index === column ? cell : each)) : line,
      ),
    );
};

/** Some arguments as in an example, so that the others reach what lies behind the first checks. */
const argumentsFor = (spec: FunctionSpec): fc.Arbitrary<readonly Argument[]> =>
  fc
    .constantFrom(...spec.examples)
    .chain(({ args }) =>
      fc.tuple(
        ...spec.parameters.map((_, index) =>
          fc.oneof(
            { weight: 3, arbitrary: fc.constant(args[index]) },
            { weight: 1, arbitrary: nearly(args[index]) },
            { weight: 2, arbitrary: anyArgument },
          ),
        ),
      ),
    );

const frozen = (args: readonly Argument[]): readonly Argument[] => {
  for (const each of args)
    if (isMatrix(each)) {
      each.forEach((line) => Object.freeze(line));
      Object.freeze(each);
    }
  return args;
};

const complaintAbout = (cell: Cell | undefined): string | undefined => {
  if (cell === undefined) return "a cell that isn't there";
  if (typeof cell === "number") return Number.isFinite(cell) ? undefined : `the number ${cell}`;
  if (!(cell instanceof CellError)) return undefined;
  if (cell.code === "#REF!") return undefined;
  if (cell.code !== "#VALUE!" && cell.code !== "#N/A") return `the error ${cell.code}`;
  if (/fault of Gablewright/.test(cell.message)) return cell.message;
  if (cell.message.length > LONGEST_SENTENCE) return `a sentence of ${cell.message.length} letters`;
  return cell.message.length < 10 ? `${cell.code} without a sentence` : undefined;
};

/** What is wrong with an answer, or undefined. */
const complaint = (spec: FunctionSpec, answer: Answer): string | undefined => {
  if (!isMatrix(answer)) return complaintAbout(answer);
  if (answer.length === 0 || answer[0]?.length === 0) return "a table without cells";
  if (answer.some((line) => line.length !== answer[0]?.length)) return "rows of unequal length";
  if (spec.columns && (answer[0]?.length ?? 0) > spec.columns.length) return "more columns than headings";
  for (const line of answer)
    for (const cell of line) {
      const found = complaintAbout(cell);
      if (found !== undefined) return found;
    }
  return undefined;
};

describe.each(catalog.map((spec) => [spec.id, spec] as const))("%s", (_, spec) => {
  it(`takes ${inputsOf(spec)} inputs of any kind and answers each, twice alike, in time`, () => {
    fc.assert(
      fc.property(argumentsFor(spec), (given) => {
        // A function that changed its arguments would throw here, and the runner would call it a fault.
        const args = frozen(given);
        const answer = runFunction(spec, args);
        const start = performance.now();
        const again = runFunction(spec, args);
        const isInTime = performance.now() - start < mostMs(spec, args);
        // `expect` and the processor's clock take longer than most of these calls: they are for what may be wrong.
        const found = complaint(spec, answer);
        if (found !== undefined) throw new Error(found);
        if (!isDeepStrictEqual(again, answer)) expect(again).toEqual(answer);
        if (!isInTime) expect(leastProcessorMs(spec, args)).toBeLessThan(mostMs(spec, args));
      }),
      { numRuns: inputsOf(spec), seed: 20_251_125, endOnFailure: true },
    );
  });
});
