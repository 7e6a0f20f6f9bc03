import type { EnteredContents } from "../../../src/workbook/enteredContents";
import { refuseUndoAfterEdits } from "../../../src/workbook/undoAddedSheets";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { blankSheet } from "../../support/blankSheet";

const typed = (
  sheets: Readonly<Record<string, Readonly<Record<string, string | number>>>>,
  names: Readonly<Record<string, string>> = {},
): EnteredContents => ({
  sheets: new Map(Object.entries(sheets).map(([name, cells]) => [name, new Map(Object.entries(cells))])),
  names: new Map(Object.entries(names)),
});

const plan = (...sheets: readonly string[]): WorkbookPlan => ({
  sheets: sheets.map(blankSheet),
  names: [{ name: "HeadLap", sheet: sheets[0] ?? "", range: "$A$1" }],
});

/** What is said when the sheets that were built are to be taken away and a formula elsewhere stands there. */
const refusal = (built: string, formula: string): string | undefined => {
  const then = typed({ [built]: { A1: "Roof" } });
  try {
    refuseUndoAfterEdits(plan(built), then, typed({ [built]: { A1: "Roof" }, Bid: { B4: formula } }));
  } catch (error) {
    return (error as Error).message;
  }
  return undefined;
};

const CALLS = 'B4 on "Bid" refers to a sheet or name that would be removed. Nothing was undone.';

describe("sheets that were built are taken away", () => {
  it.each([
    ["Panel", "=Panel!A1"],
    ["Panel", "=2*'Panel'!A1"],
    ["Takeoff", "='Takeoff'!A1"],
    ["Takeoff", "=Takeoff!A1"],
    ["Porch (N", "='Porch (N'!A1"],
    ["Bob's shed", "='Bob''s shed'!A1"],
    ["Panel", "=headlap+1"],
    ["Panel", "=SUM(HeadLap)"],
  ])("not where a formula calls on them: %s, %s", (built, formula) => {
    expect(refusal(built, formula)).toBe(CALLS);
  });

  it.each([
    ["Panel", "=OldPanel!A1"],
    ["Panel", "='Old Panel'!A1"],
    ["Porch (N", "=SUM(A1:A3)"],
    ["A.B", "=AxB!A1"],
    ["Panel", "=HeadLaps+MyHeadLap+HEADLAP(1)"],
    ["Panel", "Panel!A1"],
  ])("though another formula reads alike: %s, %s", (built, formula) => {
    expect(refusal(built, formula)).toBeUndefined();
  });

  it("not where a person has typed on them, or has taken one away", () => {
    const then = typed({ Panel: { A1: "Roof" } });
    expect(() => {
      refuseUndoAfterEdits(plan("Panel"), then, typed({ Panel: { A1: "Roof", C9: 3 } }));
    }).toThrow('C9 on "Panel" has changed since it was built. Nothing was undone.');
    expect(() => {
      refuseUndoAfterEdits(plan("Panel"), then, typed({ Panel: {} }));
    }).toThrow('A1 on "Panel" has changed since it was built. Nothing was undone.');
    expect(() => {
      refuseUndoAfterEdits(plan("Panel"), then, typed({ Bid: {} }));
    }).toThrow('There is no sheet "Panel" any more. Nothing was undone.');
  });

  describe("with names", () => {
    const SHEETS = { Panel: { A1: "Roof" }, Bid: {} };
    const OURS = { HeadLap: "='Panel'!$A$1" };
    const refusedNames = (then: Record<string, string>, now: Record<string, string>): string | undefined => {
      try {
        refuseUndoAfterEdits(plan("Panel"), typed(SHEETS, then), typed(SHEETS, now));
      } catch (error) {
        return (error as Error).message;
      }
      return undefined;
    };

    it.each([
      [
        "Eave",
        "=Panel!$A$1",
        'The name "Eave" refers to a sheet or name that would be removed. Nothing was undone.',
      ],
      [
        "Lap",
        "=2*HeadLap",
        'The name "Lap" refers to a sheet or name that would be removed. Nothing was undone.',
      ],
      [
        "'Bid'!Eave",
        "='Panel'!$A$1",
        "The name \"'Bid'!Eave\" refers to a sheet or name that would be removed. Nothing was undone.",
      ],
      [
        "'Panel'!Rate",
        "=0.08",
        "The name \"'Panel'!Rate\" refers to a sheet or name that would be removed. Nothing was undone.",
      ],
      ["HeadLap", "=Bid!$C$3", 'The name "HeadLap" has changed since it was built. Nothing was undone.'],
    ])("not where a person has made one that would be lost or broken: %s, %s", (name, target, sentence) => {
      expect(refusedNames(OURS, { ...OURS, [name]: target })).toBe(sentence);
    });

    it("where a person's own names mean something else, or one of ours is gone", () => {
      expect(refusedNames(OURS, { ...OURS, Tax: "=Bid!$B$1", HeadLaps: "=OldPanel!$A$1" })).toBeUndefined();
      expect(refusedNames(OURS, {})).toBeUndefined();
    });

    it("where a name waited for a sheet of that name already: it is as it was, then", () => {
      const waiting = { Eave: "=Panel!$A$1" };
      expect(refusedNames({ ...OURS, ...waiting }, { ...OURS, ...waiting })).toBeUndefined();
    });
  });
});
