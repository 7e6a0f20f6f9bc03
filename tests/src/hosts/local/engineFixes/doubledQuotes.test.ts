import { generateStringWithSequence, LexerTreeBuilder } from "@univerjs/engine-formula";
import fc from "fast-check";
import { keepDoubledQuotes } from "../../../../../src/hosts/local/engineFixes/doubledQuotes";
import { unfixedFormulaEngine } from "../engineWithout";

keepDoubledQuotes();

const splitAndJoined = (formula: string): string =>
  `=${generateStringWithSequence(new LexerTreeBuilder().sequenceNodesBuilder(formula) ?? [])}`;

describe("a formula that the engine splits and joins", () => {
  it.each([
    `=GABLE.RAFTERLENGTH("16' 7""",E5)`,
    `=GABLE.COURSES("18' 6 1/2""",12)`,
    `=IF(A1="","","""Bid"" "&A1)`,
    `=A("""",12)`,
    `='It''s 5"" wide'!A1&"x"`,
  ])("is unchanged: %s", (formula) => {
    expect(splitAndJoined(formula)).toBe(formula);
  });

  it("keeps the positions of its references, which the editor uses", () => {
    const formula = `=A("a""",E5)`;
    const reference = new LexerTreeBuilder()
      .sequenceNodesBuilder(formula)
      ?.find((node) => typeof node !== "string" && node.token === "E5");
    expect(reference).toMatchObject({ startIndex: formula.indexOf("E5") - 1 });
  });

  it("keeps every text and what follows it", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z0-9 '"]{1,8}$/), fc.integer({ min: 1, max: 99 }), (text, row) => {
        const formula = `=CONCATENATE("${text.replaceAll('"', '""')}",B${row})`;
        expect(splitAndJoined(formula)).toBe(formula);
      }),
    );
  });

  it("loses a doubled quote without the fix", () => {
    const { LexerTreeBuilder: Unfixed } = unfixedFormulaEngine();
    const formula = `=GABLE.RAFTERLENGTH("16' 7""",E5)`;
    const joined = generateStringWithSequence(new Unfixed().sequenceNodesBuilder(formula) ?? []);
    expect(`=${joined}`).not.toBe(formula);
  });
});
