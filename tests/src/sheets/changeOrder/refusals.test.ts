import { CellError, type Cell } from "../../../../shared/cell";
import { addChangeOrder, type NowChoice } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { addressBeside, rowsOf, typeBeside } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { smallOrder, type Line } from "../../../support/smallOrder";

jest.setTimeout(60_000);

const DAY = 46_174;
const LINES: readonly Line[] = [
  ["panels", 80, 73.5],
  ["ridge", 5, 19.8],
];

const ofLines = (lines: readonly Line[]): PlanWorkbook => new PlanWorkbook(smallOrder(lines));

const frozen = async (lines: readonly Line[] = LINES): Promise<PlanWorkbook> => {
  const bid = ofLines(lines);
  await freezeOrder(bid.host, DAY);
  return bid;
};

const change = (bid: PlanWorkbook, now: NowChoice, base = "Signed 1") =>
  addChangeOrder(bid.host, { base, now, dateSerial: DAY });

/** The rows of the only change order, a draft perhaps. */
const changeRows = async (bid: PlanWorkbook): Promise<(readonly Cell[])[]> => {
  const name = (await bid.host.existing()).sheets.find((sheet) => /change order 1$/i.test(sheet));
  return rowsOf(bid, name ?? "");
};

const checkOf = async (bid: PlanWorkbook): Promise<Cell> => (await changeRows(bid))[2]?.[0] ?? null;

const amountOf = async (bid: PlanWorkbook, label: string): Promise<Cell> =>
  (await changeRows(bid)).find((row) => row[9] === label)?.[12] ?? null;

const totalOf = (bid: PlanWorkbook): Promise<Cell> => amountOf(bid, "Total of this change");

const expectNoTotal = async (bid: PlanWorkbook): Promise<void> => {
  expect(await totalOf(bid)).toEqual(new CellError("#N/A", expect.any(String) as string));
};

describe("freezing refuses, and writes nothing", () => {
  it.each<[string, readonly Line[], string]>([
    [
      "an item that stands there twice",
      [...LINES, [" Panels\u00a0", 1, 2]],
      '"Order" has " Panels\u00a0" twice, in rows 3 and 5: an item may stand there once. Nothing was written.',
    ],
    [
      "an item with a line break, which programs find by its name or don't",
      [["panels\n", 1, 73.5]],
      'A3 on "Order" has a line break, a tab or another sign that only looks like a space',
    ],
    [
      "text in a quantity",
      [["panels", "many", 73.5]],
      'G3 on "Order", the order of panels, takes a number of 0 or more, got "many". Nothing was written.',
    ],
    [
      "a quantity below zero",
      [["panels", -1, 73.5]],
      'G3 on "Order", the order of panels, takes a number of 0 or more, got -1. Nothing was written.',
    ],
    [
      "an error, with its sentence",
      [["panels", "=GABLE.PACKS(5,0)", 73.5]],
      'G3 on "Order", the order of panels, takes a number of 0 or more, got #VALUE! (perPack must be more than 0, got 0). Nothing was written.',
    ],
    [
      "a quantity of nothing in particular",
      [["", 4, 73.5]],
      'Row 3 of "Order" orders 4 of an item without a name. Nothing was written.',
    ],
  ])("%s", async (_, lines, sentence) => {
    const bid = ofLines(lines);
    await expect(freezeOrder(bid.host, DAY)).rejects.toThrow(sentence);
    expect((await bid.host.existing()).sheets).toEqual(["Order"]);
  });

  it("a workbook without an order, and one with several where none is meant", async () => {
    const notes = { name: "Notes", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0 };
    const none = new PlanWorkbook({ sheets: [notes], names: [] });
    await expect(freezeOrder(none.host, DAY)).rejects.toThrow(
      "The workbook has no order: build a takeoff first",
    );
    const [one, two] = [smallOrder(LINES, "Garage"), smallOrder(LINES, "Shed")];
    const both = new PlanWorkbook({ sheets: [notes, ...one.sheets, ...two.sheets], names: [] });
    await expect(freezeOrder(both.host, DAY)).rejects.toThrow(
      "The workbook has 2 orders, Garage, Shed: go to the one that is meant. Nothing was written.",
    );
    both.goTo("Shed");
    expect((await freezeOrder(both.host, DAY)).sheets).toEqual(["Signed 1"]);
    expect((await rowsOf(both, "Signed 1")).find(([label]) => label === "Order")?.[1]).toBe("Shed");
  });
});

describe("a signed sheet", () => {
  it("adds up quantity by price whatever its order says, and names what has no price", async () => {
    const bid = await frozen([...LINES, ["hip", 2, null], ["valley", 1, null], ["nails", 0, null]]);
    const rows = await rowsOf(bid, "Signed 1");
    const total = rows.findIndex(([label]) => label === "Total of the lines, before tax");
    expect(rows.slice(total - 5, total + 1).map((row) => row[11] ?? "")).toEqual([
      5880,
      99,
      "",
      "",
      "",
      5979,
    ]);
    expect(rows[total + 1]?.[0]).toBe(
      "Not in the total, and in no change order that changes them, for want of a price: hip, valley",
    );
    expect(rows.find(([label]) => label === "Status")?.[1]).toBe("as signed");
  });
});

describe("a change order refuses, and writes nothing", () => {
  it("a base that was edited", async () => {
    const bid = await frozen();
    bid.type("Signed 1", await addressBeside(bid, "Signed 1", "panels", 6), 70);
    await expect(change(bid, { kind: "frozen" })).rejects.toThrow(
      `"Signed 1" is not as it was signed: its seal doesn't fit its cells any more. Nothing was written.`,
    );
    expect((await bid.host.existing()).sheets).toEqual(["Order", "Signed 1"]);
  });

  it("a base against itself, a base that isn't there, and two orders of nothing", async () => {
    const bid = await frozen();
    await expect(change(bid, { kind: "signed", sheet: "Signed 1" })).rejects.toThrow(
      'Base and now are both "Signed 1": nothing can have changed.',
    );
    await expect(change(bid, { kind: "frozen" }, "Signed 9")).rejects.toThrow(
      'There is no signed sheet "Signed 9" in the workbook.',
    );
    const empty = await frozen([["panels", 0, 73.5]]);
    await expect(change(empty, { kind: "frozen" })).rejects.toThrow(
      'Neither "Signed 1" nor "Signed 2" orders anything. Nothing was written.',
    );
  });
});

describe("a change order names what stands in the way of its total, and gives none", () => {
  it("a base that is edited after it was made", async () => {
    const bid = await frozen();
    await change(bid, { kind: "frozen" });
    expect(await checkOf(bid)).toBe("");
    expect(await totalOf(bid)).toBe(0);
    bid.type("Signed 1", await addressBeside(bid, "Signed 1", "panels", 6), 70);
    expect(await checkOf(bid)).toBe('"Signed 1" was edited since it was signed');
    await expectNoTotal(bid);
  });

  it("prices that are missing, on either side", async () => {
    const bid = await frozen([["panels", 80, null], ...LINES.slice(1), ["hip", 2, 4]]);
    bid.type("Order", "G3", 81);
    bid.type("Order", "K5", null);
    await change(bid, { kind: "frozen" });
    expect(await checkOf(bid)).toBe("no price of 0 or more for: panels, hip");
    await expectNoTotal(bid);
    await expect(
      addJournalEntry(bid.host, "Change order 1", {
        receivable: "1",
        retainage: "2",
        revenue: "3",
        tax: "4",
      }),
    ).rejects.toThrow(
      '"Change order 1" has no total: no price of 0 or more for: panels, hip. Nothing was written.',
    );
  });

  it("but not a price that is missing on both sides where nothing moved", async () => {
    const bid = await frozen([["panels", 80, null], ...LINES.slice(1)]);
    bid.type("Order", "G4", 6);
    await change(bid, { kind: "draft" });
    expect(await checkOf(bid)).toBe("");
    expect(await totalOf(bid)).toBe(19.8);
    expect((await changeRows(bid))[5]?.[1]).toBe("unchanged");
    bid.type("Order", "G3", 81);
    expect(await checkOf(bid)).toBe("no price of 0 or more for: panels");
    await expectNoTotal(bid);
  });

  it("what is bought in other packs than at base, which isn't taken from it", async () => {
    for (const [address, unlike, alike] of [
      ["F4", 3, null],
      ["H4", "boxes", " Pieces"],
    ] as const) {
      const bid = await frozen();
      bid.type("Order", address, unlike);
      bid.type("Order", "G4", 2);
      await change(bid, { kind: "draft" });
      expect(await checkOf(bid)).toBe(
        "bought in other packs than at base, pack it as then or give it another name: ridge",
      );
      const [, , , , , panels, ridge] = await changeRows(bid);
      expect(ridge?.slice(7, 10)).toEqual([5, 2, "unlike packs"]);
      // Material, labor and tax: no money on the line whose change isn't known, and no sum that passes over it.
      expect([12, 14, 16].map((column) => [panels?.[column], ridge?.[column]])).toEqual([
        [0, ""],
        [0, ""],
        [0, ""],
      ]);
      for (const amount of ["Material, additions", "Labor, deductions", "Sales tax"])
        expect(await amountOf(bid, amount)).toMatchObject({ code: "#N/A" });
      await expectNoTotal(bid);
      bid.type("Order", address, alike);
      expect(await checkOf(bid)).toBe("");
      expect(await totalOf(bid)).toBe(-59.4);
    }
  });

  it("what a pack holds in another unit than at base, or where nothing but the unit says what is ordered", async () => {
    for (const [typed, alike] of [
      [{ F4: 3 }, { B4: "Pieces " }],
      [{ H4: null }, { B4: "pieces" }],
    ] as const) {
      const bid = ofLines(LINES);
      for (const [address, value] of Object.entries(typed)) bid.type("Order", address, value);
      await freezeOrder(bid.host, DAY);
      bid.type("Order", "B4", "m");
      bid.type("Order", "C4", 2);
      bid.type("Order", "G4", 2);
      await change(bid, { kind: "draft" });
      expect(await checkOf(bid)).toBe(
        "bought in other packs than at base, pack it as then or give it another name: ridge",
      );
      const ridge = (await changeRows(bid))[6];
      expect([ridge?.[5], ridge?.[9], ridge?.[12]]).toEqual(["unlike units", "unlike packs", ""]);
      await expectNoTotal(bid);
      for (const [address, value] of Object.entries(alike)) bid.type("Order", address, value);
      expect(await checkOf(bid)).toBe("");
      expect(await totalOf(bid)).toBe(-59.4);
      expect((await changeRows(bid))[6]?.[5]).toBe(-3);
    }
  });

  it("a word that is none of those offered", async () => {
    const bid = await frozen();
    await change(bid, { kind: "frozen" });
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "Tax is rounded", 3), "never");
    bid.type("Change order 1", await addressBeside(bid, "Change order 1", "ridge", 15), "perhaps");
    expect(await checkOf(bid)).toBe("taxable is yes or no: ridge; choose each line or on the total");
    await expectNoTotal(bid);
  });

  it("what a live order gains, has twice, or says in words, once a draft stands on it", async () => {
    const bid = await frozen([...LINES, ["hip", 0, 4]]);
    await change(bid, { kind: "draft" });
    expect((await changeRows(bid))[1]?.[0]).toBe(
      'Base: "Signed 1". Now: "Order", which still moves: a draft until it is frozen.',
    );
    bid.type("Order", "G4", 8);
    expect(await totalOf(bid)).toBe(59.4);
    bid.type("Order", "G5", 3);
    expect(await checkOf(bid)).toBe("the order has gained what this sheet doesn't list, make it again: hip");
    await expectNoTotal(bid);
    bid.type("Order", "A5", "Ridge");
    expect(await checkOf(bid)).toBe("the order has an item twice: Ridge");
    // Below the last line that it had.
    bid.type("Order", "A6", "gutter");
    bid.type("Order", "G6", 2);
    expect(await checkOf(bid)).toBe(
      "the order has gained what this sheet doesn't list, make it again: gutter; the order has an item twice: Ridge",
    );
    bid.type("Order", "A6", null);
    bid.type("Order", "G6", null);
    bid.type("Order", "A5", null);
    bid.type("Order", "G4", "some");
    expect(await checkOf(bid)).toBe(
      "the order has no item in row: 5; the quantity is no number of 0 or more: ridge",
    );
  });
});

describe("a change order takes only what freezing and its terms take, and names the rest", () => {
  it("prices and quantities below zero, and an order of nothing in particular, in a draft", async () => {
    const bid = await frozen();
    await change(bid, { kind: "draft" });
    bid.type("Order", "K4", -5);
    expect(await checkOf(bid)).toBe("no price of 0 or more for: ridge");
    await expectNoTotal(bid);
    bid.type("Order", "K4", 19.8);
    bid.type("Order", "G4", -3);
    expect(await checkOf(bid)).toBe("the quantity is no number of 0 or more: ridge");
    bid.type("Order", "G4", 2);
    bid.type("Order", "A4", null);
    expect(await checkOf(bid)).toBe("the order has no item in row: 4");
    bid.type("Order", "A4", "ridge");
    bid.type("Order", "C4", "some");
    expect(await checkOf(bid)).toBe("the need is no number of 0 or more: ridge");
  });

  it("rates, days, a contract sum and labor that aren't what they take", async () => {
    const bid = await frozen();
    await change(bid, { kind: "frozen" });
    const sheet = "Change order 1";
    await typeBeside(bid, sheet, 3, {
      "Overhead on cost": 10,
      "Profit on cost and overhead": -0.1,
      "Sales tax, state and local": 7.25,
      Retainage: "ten",
      "Days added by this change": "two",
      "Contract sum as signed": -1,
    });
    bid.type(sheet, await addressBeside(bid, sheet, "panels", 13), "5 each");
    expect(await checkOf(bid)).toBe(
      [
        "labor for each is a number of 0 or more, even for returned items: panels",
        "Overhead on cost takes 0 to 1, as 0.1 or 10%",
        "Profit on cost and overhead takes 0 to 1, as 0.1 or 10%",
        "Sales tax, state and local takes 0 to 1, as 0.1 or 10%",
        "Retainage takes 0 to 1, as 0.1 or 10%",
        "Days added by this change takes a whole number",
        "Contract sum as signed takes a number of 0 or more",
      ].join("; "),
    );
    await expectNoTotal(bid);
  });
});

describe("what is measured in another unit than at base", () => {
  it("isn't subtracted, though what is bought in the same packs is", async () => {
    const bid = await frozen();
    bid.type("Order", "B4", "m");
    bid.type("Order", "C4", 1.5);
    bid.type("Order", "G4", 2);
    await change(bid, { kind: "frozen" });
    const ridge = (await changeRows(bid))[6];
    expect(ridge?.slice(2, 6)).toEqual(["pieces to m", 5, 1.5, "unlike units"]);
    expect(await checkOf(bid)).toBe("");
    expect(await totalOf(bid)).toBe(-59.4);
    const why = (await changeRows(bid)).find((row) => String(row[1]).includes("measured"))?.[1];
    expect(why).toBe("now measured in m, before in pieces");
  });

  it("is in the unit of the side that needs some, where the other needs none", async () => {
    const bid = await frozen([["gutter", 0, 5], ...LINES]);
    bid.type("Order", "B3", "m");
    bid.type("Order", "H3", "rolls");
    bid.type("Order", "C3", 30);
    bid.type("Order", "G3", 3);
    await change(bid, { kind: "frozen" });
    const gutter = (await changeRows(bid))[5];
    expect([0, 1, 2, 5, 6, 9].map((column) => gutter?.[column])).toEqual(["gutter", "added", "m", 30, "rolls", 3]); // prettier-ignore
    expect(await totalOf(bid)).toBe(15);
  });
});

describe("labor for each", () => {
  it("is no less than 0: what is taken back turns its sign by itself", async () => {
    const bid = await frozen();
    bid.type("Order", "G4", 3);
    await change(bid, { kind: "frozen" });
    const sheet = "Change order 1";
    bid.type(sheet, await addressBeside(bid, sheet, "ridge", 13), -4);
    expect(await checkOf(bid)).toBe(
      "labor for each is a number of 0 or more, even for returned items: ridge",
    );
    await expectNoTotal(bid);
    bid.type(sheet, await addressBeside(bid, sheet, "ridge", 13), 4);
    expect(await checkOf(bid)).toBe("");
    expect(await amountOf(bid, "Labor, deductions")).toBe(-8);
  });
});

describe("a change order's date", () => {
  it.each([
    ["a text", "Monday"],
    ["blank", null],
    ["a number that is no date", 20_260_601],
  ])("isn't %s", async (_, typed) => {
    const bid = await frozen();
    await change(bid, { kind: "frozen" });
    const sheet = "Change order 1";
    bid.type(sheet, await addressBeside(bid, sheet, "Date", 3), typed);
    expect(await checkOf(bid)).toBe("Date takes a date, as 2026-06-01");
    await expectNoTotal(bid);
    bid.type(sheet, await addressBeside(bid, sheet, "Date", 3), DAY + 1);
    expect(await checkOf(bid)).toBe("");
  });
});

describe("items are found by their names", () => {
  it("wherever their rows went, and with signs that a look-up takes for any text", async () => {
    const bid = await frozen([
      ["nails 1* ~ ?", 2, 3],
      ["nails 1 a ~ b", 5, 7],
      ["ridge", 1, 1],
    ]);
    for (const [row, line] of [
      ["ridge", 1, 1],
      ["nails 1 a ~ b", 6, 7],
      ["nails 1* ~ ?", 2, 3],
    ].entries())
      for (const [at, column] of [
        [0, "A"],
        [1, "C"],
        [1, "G"],
        [2, "K"],
      ] as const)
        bid.type("Order", `${column}${row + 3}`, line[at] ?? null);
    await change(bid, { kind: "frozen" });
    const rows = await changeRows(bid);
    expect(rows.slice(5, 8).map((row) => [row[0], row[1], row[7], row[8], row[12]])).toEqual([
      ["nails 1* ~ ?", "unchanged", 2, 2, 0],
      ["nails 1 a ~ b", "changed", 5, 6, 7],
      ["ridge", "unchanged", 1, 1, 0],
    ]);
  });

  it("whatever spaces stand around and within them, also in a draft", async () => {
    for (const kind of ["frozen", "draft"] as const) {
      const bid = await frozen([
        ["ridge  vent", 2, 5],
        ["hip", 3, 5],
      ]);
      bid.type("Order", "A3", " Ridge\u00a0vent\u00a0");
      bid.type("Order", "G3", 3);
      await change(bid, { kind });
      const rows = await changeRows(bid);
      expect(rows.slice(5, 8).map((row) => [row[0] ?? "", row[1] ?? "", row[7] ?? "", row[8] ?? ""])).toEqual(
        [
          ["ridge  vent", "changed", 2, 3],
          ["hip", "unchanged", 3, 3],
          ["", "", "", ""],
        ],
      );
      expect(await checkOf(bid)).toBe("");
      expect(await totalOf(bid)).toBe(5);
    }
  });

  it("letter by letter in a draft too, whatever signs are in them", async () => {
    const bid = await frozen([
      ["hip *", 2, 5],
      ["hip a", 3, 5],
      ["hip ~?", 4, 5],
    ]);
    bid.type("Order", "G3", 3);
    await change(bid, { kind: "draft" });
    expect(await checkOf(bid)).toBe("");
    bid.type("Order", "A4", "hi*");
    expect(await checkOf(bid)).toBe("the order has gained what this sheet doesn't list, make it again: hi*");
    bid.type("Order", "A4", " HIP\u00a0 *");
    expect(await checkOf(bid)).toContain("the order has an item twice:  HIP\u00a0 *");
  });

  it("also where one is called as its column is", async () => {
    const bid = await frozen([["Item", 2, 5]]);
    bid.type("Order", "G3", 3);
    await change(bid, { kind: "draft" });
    expect(await checkOf(bid)).toBe("");
    expect(await totalOf(bid)).toBe(5);
  });

  it("and added, removed, changed and unchanged ones are told apart", async () => {
    const bid = await frozen([
      ["panels", 4, 10],
      ["ridge", 2, 5],
      ["hip", 3, 5],
      ["valley", 0, 6],
    ]);
    bid.type("Order", "G3", 6);
    bid.type("Order", "A4", "eave");
    bid.type("Order", "G6", 1);
    await change(bid, { kind: "frozen" });
    const rows = await changeRows(bid);
    expect(rows.slice(5, 10).map((row) => [row[0], row[1], row[9], row[12]])).toEqual([
      ["panels", "changed", 2, 20],
      ["ridge", "removed", -2, -10],
      ["hip", "unchanged", 0, 0],
      ["valley", "added", 1, 6],
      ["eave", "added", 2, 10],
    ]);
    expect(await totalOf(bid)).toBe(26);
  });
});
