import fc from "fast-check";
import { catalog } from "../../../../functions/index";
import { InputError } from "../../../../shared/inputError";
import { smallBlockPlan } from "../../../../src/sheets/extend/singleResultPlan";
import { singleResultOptions } from "../../../../src/sheets/extend/resultOptions";
import { quotedText } from "../../../../src/workbook/formula";
import { typedArgument } from "../../../../src/sheets/extend/typedArgument";

/** One argument that can't end before its end: a number, TRUE or FALSE, or a text whose quotes are all doubled. */
const ONE_ARGUMENT = /^(?:-?\d+(?:\.\d+)?(?:e[+-]\d+)?|TRUE|FALSE|"(?:[^"]|"")*")$/;

const risky = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc
    .tuple(fc.constantFrom("=", "+", "-", "@", "\t", "\r", '"', '",A1,"'), fc.string({ maxLength: 12 }))
    .map((parts) => parts.join("")),
  fc.constantFrom(
    "12",
    "1 ft",
    "18' 6\"",
    "6:12",
    "50%",
    "ridge",
    "zinc",
    "TRUE",
    "1, 1/2",
    "left 3",
    "120; 144",
  ),
);

describe("what a person types in the pane", () => {
  const parameters = catalog.flatMap((spec) => spec.parameters.map((parameter) => ({ spec, parameter })));

  it("becomes one argument, or is refused with a sentence, whatever it is", () => {
    fc.assert(
      fc.property(fc.constantFrom(...parameters), risky, ({ spec, parameter }, typed) => {
        try {
          const argument = typedArgument(spec, parameter, typed);
          if (argument !== undefined) expect(argument).toMatch(ONE_ARGUMENT);
        } catch (failure) {
          expect(failure).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it("keeps its text between the quotes", () => {
    expect(quotedText('a "b"')).toBe('"a ""b"""');
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(quotedText(text).slice(1, -1).replaceAll('""', '"')).toBe(text);
      }),
    );
  });

  it("is text or a number in a cell, never a formula", () => {
    const options = singleResultOptions([]);
    fc.assert(
      fc.property(fc.constantFrom(...options), risky, risky, (option, heading, typed) => {
        const everything = Object.fromEntries(option.fields.map(({ key }) => [key, typed]));
        try {
          const patch = smallBlockPlan(
            "Bid",
            { row: 0, column: 0 },
            { option, heading },
            { names: [], typed: everything },
          );
          const formulas = patch.cells.flatMap((line) =>
            line.flatMap((cell, column) => (cell?.content.kind === "formula" ? [column] : [])),
          );
          expect(new Set(formulas)).toEqual(new Set([(patch.cells[0]?.length ?? 1) - 1]));
          expect(formulas).toHaveLength(patch.cells.length - 1);
        } catch (failure) {
          expect(failure).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
