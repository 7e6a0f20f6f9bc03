/** @jest-environment jsdom */
import { h } from "preact";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { ExtendCard } from "../../../src/pane/extend/ExtendCard";
import { RepairCard } from "../../../src/pane/RepairCard";
import { press, seen, shareShown, show } from "../../support/card";
import { fakeExcel, fakeWorkbook, type FakeSheet } from "../../support/fakeExcel";

const excel = () => {
  const workbook = fakeWorkbook("Bid");
  const sheet = workbook.sheets[0] as FakeSheet;
  Object.entries({ A1: "Eave (ft)", B1: "Slope (in)", A2: 30, B2: 168 }).forEach(([address, formula]) =>
    sheet.cells.set(address, { formula }),
  );
  const host = excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  );
  return { workbook, sheet, host };
};

/** Long enough for several steps. */
const LAST_ROW = 4_000;

describe("the card that extends, beside Excel's stand-in", () => {
  it("proposes, writes, and takes back", async () => {
    const { sheet, host } = excel();
    const card = show(h(ExtendCard, { host }));
    press(card, "Read the selection");
    await seen(card, "What the columns hold");
    expect(sheet.cells.size).toBe(4);
    card.querySelector<HTMLInputElement>('[name="extend-SQUARES"]')?.click();
    await seen(card, 'Will write C1:C2 on "Bid".');
    press(card, "Write");
    await seen(card, 'Wrote 1 column, 2 cells, C1:C2 on "Bid".');
    expect(sheet.cells.get("C2")?.formula).toContain("GABLE.SQUARES(");
    press(card, "Undo");
    await seen(card, 'Undone: C1:C2 on "Bid" is as it was.');
    expect(sheet.cells.size).toBe(4);
  });

  it("asks for a result before it writes, and says what Excel refuses", async () => {
    const { sheet, host } = excel();
    const card = show(h(ExtendCard, { host }));
    press(card, "Read the selection");
    await seen(card, "Pick at least one result.");
    sheet.isProtected = true;
    card.querySelector<HTMLInputElement>('[name="extend-SQUARES"]')?.click();
    await seen(card, "Will write");
    press(card, "Write");
    await seen(card, '"Bid" is protected. Nothing was written.');
  });

  it("shows how far a long write is, and leaves no trace of one that is canceled", async () => {
    const { workbook, sheet, host } = excel();
    for (let row = 3; row <= LAST_ROW; row++) {
      sheet.cells.set(`A${row}`, { formula: 20 + (row % 9) });
      sheet.cells.set(`B${row}`, { formula: 168 });
    }
    const before = JSON.stringify([...sheet.cells].sort());
    const card = show(h(ExtendCard, { host }));
    press(card, "Read the selection");
    await seen(card, "What the columns hold");
    for (const id of ["SQUARES", "OUTLINEAREA", "TRIMFEET"]) {
      card.querySelector<HTMLInputElement>(`[name="extend-${id}"]`)?.click();
      await new Promise((resolve) => setTimeout(resolve));
    }
    await seen(card, `Will write C1:E${LAST_ROW}`);
    const shares: number[] = [];
    workbook.onSync = () => {
      const share = shareShown(card) ?? 0;
      shares.push(share);
      if (share > 0.5) press(card, "Cancel");
    };
    press(card, "Write");
    await seen(card, "Canceled: nothing was written.");
    expect(shares.some((share) => share > 0 && share < 1)).toBe(true);
    expect(shareShown(card)).toBeUndefined();
    expect(JSON.stringify([...sheet.cells].sort())).toBe(before);
  });

  it("says why there is nothing to propose", async () => {
    const { workbook, host } = excel();
    workbook.selectedArea = "F9";
    const card = show(h(ExtendCard, { host }));
    press(card, "Read the selection");
    await seen(card, "Select a table or a block with a heading row.");
  });
});

describe("the card that repairs", () => {
  const outcome = async (
    repaired: Parameters<typeof RepairCard>[0]["repair"],
    sentence: string,
  ): Promise<void> => {
    const card = show(h(RepairCard, { repair: repaired }));
    press(card, "Repair workbook");
    await seen(card, sentence);
  };

  it.each([
    [0, 0, [], "No Gablewright formula shows #NAME?."],
    [3, 0, [], "Re-entered 3 cells; none shows #NAME? now."],
    [1, 1, ["Old", "Bid"], "Re-entered 1 cell; 1 still shows #NAME?. Skipped protected sheets: Old and Bid."],
  ])("says what came of it: %d, %d, %j", async (entered, stillUnknown, protectedSheets, sentence) => {
    await outcome(() => Promise.resolve({ entered, stillUnknown, protectedSheets }), sentence);
  });

  it("says what went wrong", async () => {
    await outcome(() => Promise.reject(new Error("Excel is busy.")), "Excel is busy.");
  });
});
