import type { Cell } from "../../../../shared/cell";
import { addChangeOrder, type NowChoice } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { issueActiveChangeOrder } from "../../../../src/sheets/changeOrder/issueChangeOrder";
import { journalEntryTable } from "../../../../src/sheets/journalEntry/journalEntryTable";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { addressBeside, rowsOf } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";
import type { WorkbookPlan } from "../../../../src/workbook/plan";
import { smallOrder } from "../../../support/smallOrder";

jest.setTimeout(60_000);

const DAY = 46_174;
const ACCOUNTS = { receivable: "1200", retainage: "1250", revenue: "4000", tax: "2200" };

let opened: PlanWorkbook | undefined;

const open = (plan: WorkbookPlan): PlanWorkbook => (opened = new PlanWorkbook(plan));

// The engine forgets what names stood for only when it goes.
afterEach(() => {
  opened?.dispose();
});

/** An order of 10 panels at 10.00, frozen. */
const frozen = async (): Promise<PlanWorkbook> => {
  const bid = open(smallOrder([["panels", 10, 10]]));
  await freezeOrder(bid.host, DAY);
  return bid;
};

const change = (bid: PlanWorkbook, base: string, now: NowChoice) =>
  addChangeOrder(bid.host, { base, now, dateSerial: DAY });

const amountOf = async (bid: PlanWorkbook, sheet: string, label: string): Promise<Cell> =>
  (await rowsOf(bid, sheet)).find((row) => row[9] === label)?.[12] ?? null;

describe("a draft", () => {
  it("counts for nothing in a later change order, takes no number from it, and isn't posted", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "draft" });
    await change(bid, "Signed 1", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 1", "Changes before this one")).toBe(0);
    expect(await amountOf(bid, "Change order 1", "Changes to date")).toBe(100);
    await expect(addJournalEntry(bid.host, "Draft change order 1", ACCOUNTS)).rejects.toThrow(
      '"Draft change order 1" is a draft: its order still moves. Make a change order that freezes it, and post that. Nothing was written.',
    );
    expect((await addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).sheets).toEqual(["Ledger 1"]);
  });
});

describe("a change order goes on from where the last one ended", () => {
  it("and refuses a base from which change was counted already", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    bid.type("Order", "G3", 25);
    const sentence =
      '"Change order 1" ends at "Signed 2": go on from there. From "Signed 1" a change would be counted twice, or never. Nothing was written.';
    for (const now of [
      { kind: "frozen" },
      { kind: "draft" },
      { kind: "signed", sheet: "Signed 2" },
    ] satisfies NowChoice[])
      await expect(change(bid, "Signed 1", now)).rejects.toThrow(sentence);
    expect((await bid.host.existing()).sheets).not.toContain("Change order 2");
    await change(bid, "Signed 2", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 2", "Changes to date")).toBe(150);
  });

  it("and names the one before it that has no total", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    await change(bid, "Signed 2", { kind: "frozen" });
    const checkOf = async (): Promise<Cell> => (await rowsOf(bid, "Change order 2"))[2]?.[0] ?? null;
    expect(await checkOf()).toBe("");
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Tax is rounded", 3), "never");
    expect(await checkOf()).toBe('"Change order 1" has no total');
  });

  it("there, back, and on", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    await change(bid, "Signed 2", { kind: "signed", sheet: "Signed 1" });
    await expect(change(bid, "Signed 2", { kind: "frozen" })).rejects.toThrow(
      '"Change order 2" ends at "Signed 1": go on from there.',
    );
    bid.type("Order", "G3", 12);
    await change(bid, "Signed 1", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 3", "Changes before this one")).toBe(0);
    expect(await amountOf(bid, "Change order 3", "Changes to date")).toBe(20);
  });
});

/** Two orders of one job, of which some are frozen, in this order. */
const garageAndShed = async (...orders: readonly ("Garage" | "Shed")[]): Promise<PlanWorkbook> => {
  const both = ["Garage", "Shed"].flatMap((name) => smallOrder([["panels", 10, 10]], name).sheets);
  const bid = open({ sheets: both, names: [] });
  for (const order of orders) {
    bid.goTo(order);
    await freezeOrder(bid.host, DAY);
  }
  return bid;
};

describe("the last change order is the one that lists the others, wherever their tabs are", () => {
  it("when change came full circle", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    await change(bid, "Signed 2", { kind: "signed", sheet: "Signed 1" });
    bid.moveFirst("Change order 2");
    await expect(change(bid, "Signed 2", { kind: "frozen" })).rejects.toThrow(
      '"Change order 2" ends at "Signed 1": go on from there.',
    );
    await change(bid, "Signed 1", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 3", "Changes to date")).toBe(100);
  });

  it("its terms, its labor and its exemption from tax go on", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    bid.type("Order", "G3", 25);
    await change(bid, "Signed 2", { kind: "frozen" });
    const type = async (label: string, columns: number, typed: string | number): Promise<void> => {
      bid.type("Change order 2", await addressBeside(bid, "Change order 2", label, columns), typed);
    };
    await type("Overhead on cost", 3, 0.1);
    await type("panels", 13, 4);
    await type("panels", 15, "no");
    bid.moveFirst("Change order 2");
    bid.type("Order", "G3", 30);
    await change(bid, "Signed 3", { kind: "frozen" });
    const rows = await rowsOf(bid, "Change order 3");
    expect(rows.find(([label]) => label === "Overhead on cost")?.[3]).toBe(0.1);
    expect([rows[5]?.[13], rows[5]?.[15]]).toEqual([4, "no"]);
    expect(await amountOf(bid, "Change order 3", "Changes to date")).toBe(100 + 77 + 77);
  });
});

describe("items that are called as a change order's labels are", () => {
  const NAMES = ["Date", "Retainage", "Days added by this change", "This change order", "Seals", "Item"];

  it("don't stand for them, in the next change order, in its seals and in the ledger", async () => {
    const bid = open(smallOrder(NAMES.map((name) => [name, 10, 10])));
    await freezeOrder(bid.host, DAY);
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    const typeTerm = async (label: string, typed: number): Promise<void> => {
      const row = (await rowsOf(bid, "Change order 1")).findLastIndex(([first]) => first === label);
      bid.type("Change order 1", `D${row + 1}`, typed);
    };
    await typeTerm("Retainage", 0.1);
    await typeTerm("Days added by this change", 3);
    bid.goTo("Change order 1");
    const { seal } = await issueActiveChangeOrder(bid.host);
    const own = (await rowsOf(bid, "Change order 1")).findLast(([first]) => first === "This change order");
    expect([own?.[3], own?.[12]]).toEqual([seal, seal]);
    await change(bid, "Signed 2", { kind: "frozen" });
    const rows = await rowsOf(bid, "Change order 2");
    expect(rows[2]?.[0]).toBe("");
    expect(rows.findLast(([label]) => label === "Retainage")?.[3]).toBe(0.1);
    expect(await amountOf(bid, "Change order 2", "Days added to date")).toBe(3);
    await addJournalEntry(bid.host, "Change order 1", ACCOUNTS);
    expect(journalEntryTable(await bid.host.contents(), "Ledger 1").slice(1)).toEqual([
      ["2026-06-01", "1200", "Change order 1: Billed", "90.00", ""],
      ["2026-06-01", "1250", "Change order 1: Held back", "10.00", ""],
      ["2026-06-01", "4000", "Change order 1: Contract revenue", "", "100.00"],
    ]);
  });

  it("don't hide that a label is gone", async () => {
    const bid = open(smallOrder([["Date", 10, 10]]));
    await freezeOrder(bid.host, DAY);
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Material, additions", -9), "Day");
    await expect(change(bid, "Signed 2", { kind: "frozen" })).rejects.toThrow(
      '"Change order 1" has no "Date" any more',
    );
  });
});

describe("two orders in one workbook", () => {
  it("have a contract sum each, and aren't compared with each other", async () => {
    const bid = await garageAndShed("Garage", "Shed");
    bid.type("Garage", "G3", 20);
    bid.type("Shed", "G3", 11);
    await expect(change(bid, "Signed 1", { kind: "signed", sheet: "Signed 2" })).rejects.toThrow(
      '"Signed 1" is of the order on "Garage", "Signed 2" of the one on "Shed": a change order compares an order with itself. Nothing was written.',
    );
    await change(bid, "Signed 1", { kind: "frozen" });
    await change(bid, "Signed 2", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 1", "Changes to date")).toBe(100);
    expect(await amountOf(bid, "Change order 2", "Changes before this one")).toBe(0);
    expect(await amountOf(bid, "Change order 2", "Changes to date")).toBe(10);
    bid.type("Garage", "G3", 25);
    await change(bid, "Signed 3", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 3", "Changes to date")).toBe(150);
  });

  it("aren't taken for each other once one was renamed, whichever is in front", async () => {
    const bid = await garageAndShed("Garage", "Shed");
    bid.rename("Garage", "Old garage");
    bid.type("Old garage", "G3", 20);
    const sentence =
      '"Signed 1" is of the order on "Garage", which is gone or renamed: it may be "Old garage" or "Shed", of the same job. Give the right one its name again. Nothing was written.';
    for (const now of [
      { kind: "frozen" },
      { kind: "draft" },
      { kind: "signed", sheet: "Signed 2" },
    ] satisfies NowChoice[])
      for (const inFront of ["Shed", "Old garage"]) {
        bid.goTo(inFront);
        await expect(change(bid, "Signed 1", now)).rejects.toThrow(sentence);
      }
    bid.rename("Old garage", "Garage");
    bid.goTo("Shed");
    await change(bid, "Signed 1", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 1", "Total of this change")).toBe(100);
  });

  it("nor where the one that stands for now was renamed since", async () => {
    const bid = await garageAndShed("Garage");
    bid.rename("Garage", "Old garage");
    bid.goTo("Old garage");
    await freezeOrder(bid.host, DAY);
    bid.rename("Old garage", "Garage");
    await expect(change(bid, "Signed 1", { kind: "signed", sheet: "Signed 2" })).rejects.toThrow(
      '"Signed 2" is of the order on "Old garage", which is gone or renamed: it may be "Garage" or "Shed", of the same job. Freeze the right one again. Nothing was written.',
    );
    bid.type("Garage", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    expect(await amountOf(bid, "Change order 1", "Total of this change")).toBe(100);
  });

  it("and are told apart by the change order that ties two names of one", async () => {
    const bid = await garageAndShed("Garage");
    const [shed] = smallOrder([["panels", 10, 10]], "Shed").sheets;
    bid.rename("Shed", "Notes");
    bid.type("Notes", "A2", null);
    bid.rename("Garage", "Old garage");
    bid.type("Old garage", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    await change(bid, "Signed 2", { kind: "signed", sheet: "Signed 1" });
    await bid.host.addSheets({ sheets: shed ? [shed] : [], names: [] });
    await change(bid, "Signed 1", { kind: "frozen" });
    expect((await rowsOf(bid, "Signed 3")).find(([label]) => label === "Order")?.[1]).toBe("Old garage");
    expect(await amountOf(bid, "Change order 3", "Changes to date")).toBe(100);
  });
});

describe("sheets that a person has renamed", () => {
  it("keep their numbers: the next change order and the next signed sheet follow the highest", async () => {
    const bid = await frozen();
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1", { kind: "frozen" });
    bid.rename("Change order 1", "Kitchen wing");
    bid.rename("Signed 2", "Agreed in June");
    bid.type("Order", "G3", 25);
    const { sheets } = await change(bid, "Agreed in June", { kind: "frozen" });
    expect(sheets).toEqual(["Change order 2", "Signed 3"]);
    expect(await amountOf(bid, "Change order 2", "Changes before this one")).toBe(100);
    expect((await rowsOf(bid, "Change order 2"))[2]?.[0]).toBe("");
    await addJournalEntry(bid.host, "Change order 2", ACCOUNTS);
    bid.rename("Ledger 1", "June");
    expect((await addJournalEntry(bid.host, "Kitchen wing", ACCOUNTS)).sheets).toEqual(["Ledger 2"]);
  });
});
