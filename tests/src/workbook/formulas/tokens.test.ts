// cspell:ignore Área
import fc from "fast-check";
import { formulaOf, isCall, tokensOf } from "../../../../src/workbook/formulas/tokens";

const told = (formula: string): string[] => tokensOf(formula).map(({ kind, text }) => `${kind} ${text}`);

describe("the tokens of a formula", () => {
  it.each([
    ["text", ['""', '"14 ft"', '"a ""quoted"" word"', '"B4"']],
    ["quoted", ["'Old bid'", "'O''Neil'", "'[Costs.xlsx]Jan'"]],
    ["bracket", ["[Feet]", "[[#Totals],[Feet]]", "['[odd']]"]],
    ["error", ["#REF!", "#N/A", "#DIV/0!", "#NAME?", "#SPILL!"]],
    ["reference", ["B4", "$B$4", "xfd1048576", "B:D", "$B:$D", "4:9", "$4:$9"]],
    ["number", ["12", "12.", ".5", "1.2E+3", "5e-7"]],
    [
      "word",
      ["SUM", "GABLE.COURSES", "ExposedHeight", "Área", "_xlfn.XLOOKUP", "TRUE", "ABCD1", "A12345678"],
    ],
    ["space", [" ", " \n\t"]],
    ["sign", ["=", "+", "(", ")", ",", "{", "@", "#", "!", ":", "%", '"', "'", "\u{1f3e0}"]],
  ])("tell %s", (kind, texts) => {
    expect(texts.flatMap(told)).toEqual(texts.map((text) => `${kind} ${text}`));
  });

  it("tell a reference from a longer name that begins like one", () => {
    expect(told("LOG10(A1)")).toEqual(["word LOG10", "sign (", "reference A1", "sign )"]);
    expect(told("AB1!C2")).toEqual(["word AB1", "sign !", "reference C2"]);
    expect(told("Q1_total")).toEqual(["word Q1_total"]);
    expect(told("T1[Feet]")).toEqual(["word T1", "bracket [Feet]"]);
    expect(told("4:9.5")).toEqual(["number 4", "sign :", "number 9.5"]);
  });

  it("tell two cells of a range apart, but keep whole columns and rows as one", () => {
    expect(told("=A1:B2")).toEqual(["sign =", "reference A1", "sign :", "reference B2"]);
    expect(told("=SUM(A:A,1:1)")).toEqual([
      "sign =",
      "word SUM",
      "sign (",
      "reference A:A",
      "sign ,",
      "reference 1:1",
      "sign )",
    ]);
  });

  it("take a bracket that never closes to the formula's end", () => {
    expect(told("Bids[Feet+1")).toEqual(["word Bids", "bracket [Feet+1"]);
  });

  it("say where a function is called", () => {
    const tokens = tokensOf("Rate*SUM(Rate)");
    expect(tokens.filter((_, index) => isCall(tokens, index)).map(({ text }) => text)).toEqual(["SUM"]);
  });

  const pieces = fc.constantFrom(
    ..."' \" '' \"\" [ ] ( ) { } # ! : $ , . _ \\ ? @ = 1 12 A1 $B$4 B:D 4:9 #REF! #N/A SUM( Bid! é \u{1f3e0} \ud800 E+".split(
      " ",
    ),
  );
  const nearlyFormulas = fc.array(fc.oneof(pieces, fc.constant(" "), fc.string())).map((all) => all.join(""));

  it("give the formula back when they are joined, whatever text it is", () => {
    fc.assert(
      fc.property(nearlyFormulas, (formula) => {
        const tokens = tokensOf(formula);
        expect(formulaOf(tokens)).toBe(formula);
        expect(tokens.every(({ text }) => text !== "")).toBe(true);
      }),
    );
  });
});
