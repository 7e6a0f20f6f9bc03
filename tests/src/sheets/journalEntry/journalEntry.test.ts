import { toCsv } from "../../../../src/workbook/csv";
import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import {
  journalEntryWarnings,
  journalEntryTable,
} from "../../../../src/sheets/journalEntry/journalEntryTable";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { addressBeside, rowsOf, typeBeside } from "../../../support/bid";
import { issue } from "../../../support/changedOrder";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { smallOrder } from "../../../support/smallOrder";

/** 2026-06-01 */
const FIRST_OF_JUNE = 46_174;
const ACCOUNTS = { receivable: "1200, trade", retainage: "=1250", revenue: '4000 "jobs"', tax: "2200" };

const posted = async (quantityNow: number): Promise<PlanWorkbook> => {
  const bid = new PlanWorkbook(smallOrder([["panels", 10, 100]]));
  await freezeOrder(bid.host, FIRST_OF_JUNE);
  bid.type("Order", "G3", quantityNow);
  await addChangeOrder(bid.host, { base: "Signed 1", now: { kind: "frozen" }, dateSerial: FIRST_OF_JUNE });
  await typeBeside(bid, "Change order 1", 3, { "Sales tax, state and local": 0.0725, Retainage: 0.1 });
  await addJournalEntry(bid.host, "Change order 1", ACCOUNTS);
  return bid;
};

describe("ledger lines", () => {
  it("are a .csv that other programs take, and that holds no formula", async () => {
    const bid = await posted(13);
    // 300.00 of panels, 21.75 of tax; a tenth of 321.75 is 32.175, which is held back as 32.18.
    expect(toCsv(journalEntryTable(await bid.host.contents(), "Ledger 1"))).toBe(
      [
        "\uFEFFDate,Account,Memo,Debit,Credit",
        '2026-06-01,"1200, trade",Change order 1: Billed,289.57,',
        '2026-06-01,"\'=1250",Change order 1: Held back,32.18,',
        '2026-06-01,"4000 ""jobs""",Change order 1: Contract revenue,,300.00',
        "2026-06-01,2200,Change order 1: Sales tax payable,,21.75",
      ].join("\r\n"),
    );
  });

  it("stand on the other side where a change deducts", async () => {
    const bid = await posted(7);
    const sides = journalEntryTable(await bid.host.contents(), "Ledger 1")
      .slice(1)
      .map((line) => line.slice(3));
    expect(sides).toEqual([
      ["", "289.57"],
      ["", "32.18"],
      ["300.00", ""],
      ["21.75", ""],
    ]);
  });

  it("leave the side that isn't used blank, and both where nothing moves", async () => {
    const bid = await posted(13);
    const sidesOf = async (): Promise<unknown[][]> =>
      (await rowsOf(bid, "Ledger 1")).slice(4, 9).map((row) => [row[3] ?? "", row[4] ?? ""]);
    expect(await sidesOf()).toEqual([
      [289.57, ""],
      [32.18, ""],
      ["", 300],
      ["", 21.75],
      [321.75, 321.75],
    ]);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Retainage", 3), 0);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 15), "no");
    expect(await sidesOf()).toEqual([
      [300, ""],
      ["", ""],
      ["", 300],
      ["", ""],
      [300, 300],
    ]);
  });

  it("that are blank on both sides are left out of the .csv", async () => {
    const bid = await posted(13);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Retainage", 3), 0);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 15), "no");
    // As they were when the ledger was written.
    const rows = await rowsOf(bid, "Ledger 1");
    const seal = rows.findIndex((row) => String(row[2] ?? "").startsWith("Seal of"));
    bid.type("Ledger 1", `D${seal + 1}`, Number(rows[seal]?.[4]));
    expect(journalEntryTable(await bid.host.contents(), "Ledger 1")).toEqual([
      ["Date", "Account", "Memo", "Debit", "Credit"],
      ["2026-06-01", "1200, trade", "Change order 1: Billed", "300.00", ""],
      ["2026-06-01", '4000 "jobs"', "Change order 1: Contract revenue", "", "300.00"],
    ]);
  });

  it("of a change order that has lost its total say so", async () => {
    const bid = await posted(13);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Tax is rounded", 3), "never");
    expect((await rowsOf(bid, "Ledger 1"))[2]?.[0]).toBe("The change order has no total: don't post this.");
  });

  it("of a change order that isn't issued yet say so on their sheet, until it is", async () => {
    const bid = await posted(13);
    const cautionOn = async () => (await rowsOf(bid, "Ledger 1"))[2]?.[0];
    expect(await cautionOn()).toBe(`"Change order 1" isn't issued yet: issue it before this is posted.`);
    const said = async () => journalEntryWarnings(await bid.host.contents(), "Ledger 1");
    expect(await said()).toEqual([await cautionOn()]);
    await issue(bid, "Change order 1");
    expect(await cautionOn()).toBe("");
    expect(await said()).toEqual([]);
  });

  it("of a change that comes to nothing aren't saved", async () => {
    const contents = await (await posted(10)).host.contents();
    expect(() => journalEntryTable(contents, "Ledger 1")).toThrow(
      'Every line of "Ledger 1" is blank or 0 on both sides: there is nothing to post. Nothing was saved.',
    );
  });

  it("need every account, a change order, and lines", async () => {
    const bid = await posted(13);
    await expect(addJournalEntry(bid.host, "Change order 1", { ...ACCOUNTS, tax: " " })).rejects.toThrow(
      'The account for "Sales tax payable" is missing. Nothing was written.',
    );
    await expect(addJournalEntry(bid.host, "Change order 7", ACCOUNTS)).rejects.toThrow(
      'There is no change order "Change order 7" in the workbook.',
    );
    const contents = await bid.host.contents();
    expect(() => journalEntryTable(contents, "Order")).toThrow(
      '"Order" has no ledger lines between its headings and "Total". Nothing was saved.',
    );
  });

  it("are written once for a change order", async () => {
    const bid = await posted(13);
    await expect(addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).rejects.toThrow(
      '"Change order 1" is already on "Ledger 1": delete that sheet to write it again. Nothing was written.',
    );
  });

  it.each<[string, string, number | string | null, string]>([
    [
      "a date in words",
      "A6",
      "Monday",
      'The date in row 6 of "Ledger 1" is no date ("Monday"): type it as 2026-06-01. Nothing was saved.',
    ],
    [
      "a number that is no date",
      "A6",
      20_260_601,
      'The date in row 6 of "Ledger 1" is no date (20260601): type it as 2026-06-01. Nothing was saved.',
    ],
    [
      "an account that is blanked",
      "B6",
      null,
      'There is no account in row 6 of "Ledger 1". Nothing was saved.',
    ],
    [
      "an amount below zero",
      "D5",
      -500,
      'The debit in row 5 of "Ledger 1" is no amount of 0 or more (-500). Nothing was saved.',
    ],
    [
      "sides that differ",
      "D5",
      500,
      'The lines of "Ledger 1" debit 532.18 and credit 321.75: they must be equal. Nothing was saved.',
    ],
  ])("are not saved with %s", async (_, address, typed, sentence) => {
    const bid = await posted(13);
    bid.type("Ledger 1", address, typed);
    const contents = await bid.host.contents();
    expect(() => journalEntryTable(contents, "Ledger 1")).toThrow(sentence);
  });
});
