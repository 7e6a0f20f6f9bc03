import type { Cell } from "../../../../shared/cell";
import { sealOf } from "../../../../shared/seal";
import { addChangeOrder, type NowChoice } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { changeOrdersOfOrder } from "../../../../src/sheets/changeOrder/changeOrderSequence";
import { changeOrderSheet } from "../../../../src/sheets/changeOrder/changeOrderSheet";
import { changeOrdersIn } from "../../../../src/sheets/changeOrder/existingChangeOrders";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { journalEntryTable } from "../../../../src/sheets/journalEntry/journalEntryTable";
import { ORDER_HEADINGS } from "../../../../src/sheets/orderSheet/orderLayout";
import { a1, readArea } from "../../../../src/workbook/address";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { readSignedOrder, type SignedOrder } from "../../../../src/sheets/signedOrder/readSignedOrder";
import { addressBeside, rowsOf } from "../../../support/bid";
import { changedOrder, DAY, issue } from "../../../support/changedOrder";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { smallOrder } from "../../../support/smallOrder";

jest.setTimeout(60_000);

const ACCOUNTS = { receivable: "1200", retainage: "1250", revenue: "4000", tax: "2200" };
const FROZEN: NowChoice = { kind: "frozen" };

const change = (bid: PlanWorkbook, base: string, now: NowChoice = FROZEN) =>
  addChangeOrder(bid.host, { base, now, dateSerial: DAY });

/** 10 panels at 10.00, changed to 20 of them. */
const changed = (): Promise<PlanWorkbook> => changedOrder(["panels", 10, 10]);

const textAt = async (bid: PlanWorkbook, sheet: string, row: number): Promise<Cell> =>
  (await rowsOf(bid, sheet))[row]?.[0] ?? null;
const checkOf = (bid: PlanWorkbook, sheet: string): Promise<Cell> => textAt(bid, sheet, 2);
const statusOf = (bid: PlanWorkbook, sheet: string): Promise<Cell> => textAt(bid, sheet, 3);

const type = async (
  bid: PlanWorkbook,
  sheet: string,
  label: string,
  columns: number,
  typed: string | number,
): Promise<void> => {
  bid.type(sheet, await addressBeside(bid, sheet, label, columns), typed);
};

it("the seal of a change order leaves what it says of cents free", async () => {
  const bid = await changed();
  await issue(bid, "Change order 1");
  const note = await addressBeside(bid, "Change order 1", "Changes to date", 8);
  const { row, column } = readArea(note).from;
  expect((await rowsOf(bid, "Change order 1"))[row]?.[column]).toMatch(/a cent may remain$/);
  bid.type("Change order 1", note, null);
  expect(await statusOf(bid, "Change order 1")).toBe("");
});

describe("the check of a change order", () => {
  it("names what is no longer listed, and what is listed twice, once an item is retyped", async () => {
    const bid = new PlanWorkbook(smallOrder([["panels", 10, 10], ["ridge", 5, 20]])); // prettier-ignore
    await freezeOrder(bid.host, DAY);
    bid.type("Order", "G3", 20);
    await change(bid, "Signed 1");
    await type(bid, "Change order 1", "panels", 0, "panels, gray");
    expect(await checkOf(bid, "Change order 1")).toContain("this sheet no longer lists: panels");
    await type(bid, "Change order 1", "panels, gray", 0, "ridge");
    expect(await checkOf(bid, "Change order 1")).toContain("this sheet has an item twice: ridge");
    await expect(issue(bid, "Change order 1")).rejects.toThrow('"Change order 1" has no total');
  });

  it("can't be done without: cleared, it leaves no total over an edited base, and nothing is issued", async () => {
    const bid = await changed();
    bid.type("Change order 1", "A3", null);
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      '"Change order 1" has no check in A3 any more',
    );
    await type(bid, "Signed 1", "panels", 6, 7);
    const rows = await rowsOf(bid, "Change order 1");
    expect(rows.find((row) => row[9] === "Total of this change")?.[12]).toMatchObject({ code: "#N/A" });
  });
});

describe("a change order that has lost a label", () => {
  it.each(["Total of this change", "Days added by this change", "Item"])(
    "still counts, and nothing goes on from it: %s",
    async (label) => {
      const bid = await changed();
      await issue(bid, "Change order 1");
      await type(bid, "Change order 1", label, 0, "retyped");
      bid.type("Order", "G3", 25);
      await expect(change(bid, "Signed 2")).rejects.toThrow(
        `"Change order 1" has no "${label}" any more, by which its figures are found: write it again. Nothing was written.`,
      );
      await expect(addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).rejects.toThrow(
        "Nothing was written.",
      );
    },
  );
});

describe("a signed sheet that has lost a label", () => {
  const amountOf = async (bid: PlanWorkbook, sheet: string, label: string): Promise<Cell | undefined> =>
    (await rowsOf(bid, sheet)).find((row) => row[9] === label)?.[12];

  it("is edited, and leaves the change order that goes by it agreed", async () => {
    const bid = await changed();
    await type(bid, "Signed 2", "Seal as signed", 0, "Seal");
    expect(changeOrdersIn(await bid.host.contents()).map(({ isDraft }) => isDraft)).toEqual([false]);
    for (const now of [FROZEN, { kind: "draft" }] satisfies NowChoice[])
      await expect(change(bid, "Signed 2", now)).rejects.toThrow(
        '"Signed 2" was edited since it was signed: no cell of its first column says "Seal as signed" any more. Nothing was written.',
      );
    await expect(change(bid, "Signed 1")).rejects.toThrow(
      '"Change order 1" ends at "Signed 2": go on from there.',
    );
    expect((await addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).sheets).toEqual(["Ledger 1"]);
    await type(bid, "Signed 2", "Seal", 0, "Seal as signed");
    bid.type("Order", "G3", 25);
    await change(bid, "Signed 2");
    expect(await amountOf(bid, "Change order 2", "Changes to date")).toBe(150);
  });

  it("even every one makes no draft of a change order that holds its seal", async () => {
    const bid = await changed();
    for (const label of ["Seal as signed", "Seal of the cells now", "Status"])
      await type(bid, "Signed 2", label, 0, "?");
    expect(changeOrdersIn(await bid.host.contents()).map(({ isDraft }) => isDraft)).toEqual([false]);
    await expect(change(bid, "Signed 1")).rejects.toThrow(
      '"Change order 1" ends at "Signed 2": go on from there.',
    );
  });

  it("isn't found by an item that is called so", async () => {
    const bid = new PlanWorkbook(smallOrder([["Seal as signed", 10, 10], ["Order", 1, 1], ["Status", 2, 2]])); // prettier-ignore
    await freezeOrder(bid.host, DAY);
    await type(bid, "Order", "Seal as signed", 6, 20);
    await change(bid, "Signed 1");
    expect(await amountOf(bid, "Change order 1", "Changes to date")).toBe(100);
    await type(bid, "Signed 2", "Seal as signed", 0, "Seal");
    await expect(change(bid, "Signed 2")).rejects.toThrow('"Signed 2" was edited since it was signed');
  });
});

describe("rows that are inserted above a signed sheet's seals", () => {
  it("leave it the signed sheet that it is", async () => {
    const bid = await changed();
    const { sheets, targets } = await bid.host.contents();
    const signed = sheets.get("Signed 2");
    const lower = (formula: string): string =>
      formula.replace(/(?<=[A-Z])\d+/g, (row) => String(Number(row) + 1));
    const moved = {
      cells: [[], ...(signed?.cells ?? [])],
      formulas: [[], ...(signed?.formulas ?? []).map((line) => line.map(lower))],
    };
    const contents = { sheets: new Map([...sheets, ["Signed 2", moved] as const]), targets };
    const { order, from, job, measurements } = readSignedOrder({ sheets, targets }, "Signed 2");
    expect(readSignedOrder(contents, "Signed 2")).toMatchObject({ from, job, measurements });
    expect(readSignedOrder(contents, "Signed 2").order.headingRow).toBe(order.headingRow + 1);
    expect(changeOrdersIn(contents).map(({ isDraft }) => isDraft)).toEqual([false]);
    expect(changeOrdersOfOrder(contents, "Order").map(({ sheet }) => sheet)).toEqual(["Change order 1"]);
  });
});

describe("the seal of a signed base", () => {
  it("is worked out by the change order itself, whatever the base says of itself", async () => {
    const bid = await changed();
    await type(bid, "Signed 1", "panels", 6, 7);
    await type(bid, "Signed 1", "Status", 1, "as signed");
    expect(await checkOf(bid, "Change order 1")).toBe('"Signed 1" was edited since it was signed');
  });

  it("stands on the change order as it was, so that another seal on the base hides nothing", async () => {
    const bid = await changed();
    const rows = await rowsOf(bid, "Change order 1");
    const then = rows.find((row) => row[0] === "Signed 1")?.[3];
    expect(then).toBe(readSignedOrder(await bid.host.contents(), "Signed 1").sealed.seal);
    await type(bid, "Signed 1", "panels", 6, 7);
    const now = (await rowsOf(bid, "Signed 1")).find(([label]) => label === "Seal of the cells now")?.[1];
    await type(bid, "Signed 1", "Seal as signed", 1, Number(now));
    expect((await rowsOf(bid, "Signed 1"))[4]?.[1]).toBe("as signed");
    expect(await checkOf(bid, "Change order 1")).toBe('"Signed 1" was edited since it was signed');
  });

  it("covers all that is read: what is written around it is passed over", async () => {
    const bid = await changed();
    const before = readSignedOrder(await bid.host.contents(), "Signed 1");
    ORDER_HEADINGS.forEach((heading, column) => {
      bid.type("Signed 1", a1({ row: 5, column: column + 13 }), heading);
    });
    bid.type("Signed 1", "N7", "nails");
    bid.type("Signed 1", "T7", 5);
    bid.type("Signed 1", "A1", "Signed by somebody else");
    expect(readSignedOrder(await bid.host.contents(), "Signed 1")).toEqual(before);
  });
});

describe("an issued change order", () => {
  it("has a seal of its figures, which leaves reasons, initials and signatures free", async () => {
    const bid = await changed();
    await issue(bid, "Change order 1");
    const rows = await rowsOf(bid, "Change order 1");
    const own = rows.find((row) => row[0] === "This change order");
    const head = rows.findIndex(([label]) => label === "Item");
    const end = rows.findIndex((row) => row[9] === "Days added to date");
    expect(own?.[3]).toBe(
      sealOf(rows.slice(head, end + 1).map((row) => Array.from({ length: 17 }, (_, at) => row[at] ?? null))),
    );
    expect(own?.[12]).toBe(own?.[3]);
    await type(bid, "Change order 1", "panels", 17, "the owner wants more");
    await type(bid, "Change order 1", "panels", 18, "A.B.");
    const signature = String(rows.at(-5)?.[0]);
    expect(signature).toContain("Agreed for the owner");
    await type(bid, "Change order 1", signature, 0, "Agreed");
    expect(await statusOf(bid, "Change order 1")).toBe("");
  });

  it.each<[string, string, number, string | number]>([
    ["labor", "panels", 13, 5],
    ["a rate", "Retainage", 3, 0.1],
    ["the date", "Date", 3, DAY + 1],
    ["a quantity that is typed over", "panels", 8, 19],
    ["a total that is typed over", "Total of this change", 3, 1],
  ])("says that it was edited by %s, and nothing goes on from it", async (_, label, columns, typed) => {
    const bid = await changed();
    await issue(bid, "Change order 1");
    await type(bid, "Change order 1", label, columns, typed);
    expect(await statusOf(bid, "Change order 1")).toBe(
      `"Change order 1" was edited since it was issued: its seal doesn't fit its figures any more`,
    );
    const sentence = `"Change order 1" is not as it was issued: its seal doesn't fit its figures any more. Nothing was written.`;
    await expect(change(bid, "Signed 2")).rejects.toThrow(sentence);
    await expect(addJournalEntry(bid.host, "Change order 1", ACCOUNTS)).rejects.toThrow(sentence);
    expect((await bid.host.existing()).sheets).toHaveLength(4);
  });

  it("is issued once, never as a draft, and not without a total; undoing takes the seal away", async () => {
    const bid = await changed();
    const { undo } = await issue(bid, "Change order 1");
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      /^"Change order 1" is issued already, under the seal \d+\. Nothing was written\.$/,
    );
    await undo();
    await type(bid, "Change order 1", "Tax is rounded", 3, "never");
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      '"Change order 1" has no total: choose each line or on the total. Nothing was written.',
    );
    await type(bid, "Change order 1", "Tax is rounded", 3, "each line");
    await change(bid, "Signed 2", { kind: "draft" });
    await expect(issue(bid, "Draft change order 1")).rejects.toThrow(
      '"Draft change order 1" is a draft: its order still moves. Make a change order that freezes it, and issue that. Nothing was written.',
    );
    await expect(issue(bid, "Order")).rejects.toThrow(
      "Go to the change order that is to be issued. Nothing was written.",
    );
  });
});

describe("issuing a change order", () => {
  it("says that it isn't as issued once an edit of what it goes by leaves it without figures", async () => {
    const bid = await changed();
    await issue(bid, "Change order 1");
    expect(await statusOf(bid, "Change order 1")).toBe("");
    await type(bid, "Signed 1", "panels", 6, 7);
    expect(await statusOf(bid, "Change order 1")).toBe(
      `"Change order 1" isn't as it was issued: figures of it aren't available any more`,
    );
  });

  it("says that it shows no contract sum where that was left blank, and nothing once it is typed", async () => {
    const bid = await changed();
    const { remarks, undo } = await issue(bid, "Change order 1");
    expect(remarks).toEqual(['It shows no contract sum: "Contract sum as signed" was left blank.']);
    await undo();
    await type(bid, "Change order 1", "Contract sum as signed", 3, 5_000);
    expect((await issue(bid, "Change order 1")).remarks).toEqual([]);
  });
});

describe("what builds on a change order", () => {
  it("names it once it is edited, and has no total until that is taken back", async () => {
    const bid = await changed();
    await change(bid, "Signed 2");
    expect(await checkOf(bid, "Change order 2")).toBe("");
    await type(bid, "Change order 1", "panels", 13, 5);
    expect(await checkOf(bid, "Change order 2")).toBe(
      '"Change order 1" was edited since this was made: undo that, or make this one again',
    );
    const amountsOf = async (): Promise<Cell[]> => {
      const rows = await rowsOf(bid, "Change order 2");
      return ["Total of this change", "Changes before this one", "Days added to date"].map(
        (label) => rows.find((row) => row[9] === label)?.[12] ?? null,
      );
    };
    expect(await amountsOf()).toMatchObject([{ code: "#N/A" }, { code: "#N/A" }, { code: "#N/A" }]);
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 13), null);
    expect(await checkOf(bid, "Change order 2")).toBe("");
    expect(await amountsOf()).toEqual([0, 100, 0]);
  });

  it("seals one that was made before change orders had seals, though that can't be issued", async () => {
    const bid = await changed();
    await type(bid, "Change order 1", "This change order", 0, "");
    await expect(issue(bid, "Change order 1")).rejects.toThrow(
      '"Change order 1" has no row for its seal: make it again. Nothing was written.',
    );
    await change(bid, "Signed 2");
    await type(bid, "Change order 1", "panels", 13, 5);
    expect(await checkOf(bid, "Change order 2")).toContain('"Change order 1" was edited since this was made');
  });

  it("takes no formula longer than Excel's 8,192 characters, though a hundred went before", async () => {
    const bid = await changed();
    const contents = await bid.host.contents();
    const [base, now] = ["Signed 1", "Signed 2"].map((sheet) => readSignedOrder(contents, sheet)) as [
      SignedOrder,
      SignedOrder,
    ];
    const { cells } = changeOrderSheet({
      sheetName: "Change order 101",
      job: "shed",
      dateSerial: DAY,
      base,
      now,
      renamed: new Map(),
      previous: Array.from({ length: 100 }, () => changeOrdersIn(contents)).flat(),
      causes: [],
    });
    const lengths = cells.map(({ content }) => (content?.kind === "formula" ? content.formula.length : 0));
    expect(Math.max(...lengths)).toBeLessThanOrEqual(8192);
    expect(cells.filter(({ content }) => content?.kind === "formula").length).toBeGreaterThan(200);
  });

  it("names a seal that can't be worked out", async () => {
    const bid = await changed();
    await type(bid, "Signed 1", "Made by", 1, "=1/0");
    expect(await checkOf(bid, "Change order 1")).toBe(`the seal of "Signed 1" can't be worked out here`);
  });

  it("isn't made as long as one before it has no total", async () => {
    const bid = await changed();
    await type(bid, "Change order 1", "Retainage", 3, "ten");
    await expect(change(bid, "Signed 2")).rejects.toThrow(
      '"Change order 1" has no total: Retainage takes 0 to 1, as 0.1 or 10%. Nothing was written.',
    );
  });

  it("a ledger entry too, which is not saved then", async () => {
    const bid = await changed();
    await issue(bid, "Change order 1");
    await addJournalEntry(bid.host, "Change order 1", ACCOUNTS);
    expect(await checkOf(bid, "Ledger 1")).toBe("");
    await type(bid, "Change order 1", "panels", 13, 5);
    const sentence = `"Change order 1" was edited since this was written: don't post this.`;
    expect(await checkOf(bid, "Ledger 1")).toBe(sentence);
    const contents = await bid.host.contents();
    const refusal = '"Ledger 1" is of a change order that was edited since, or has lost its seals';
    expect(() => journalEntryTable(contents, "Ledger 1")).toThrow(refusal);
    bid.type("Ledger 1", "A3", null);
    const unchecked = await bid.host.contents();
    expect(() => journalEntryTable(unchecked, "Ledger 1")).toThrow(refusal);
  });
});
