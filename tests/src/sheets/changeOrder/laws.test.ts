import fc from "fast-check";
import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { AMOUNT_COLUMNS } from "../../../../src/sheets/changeOrder/changeOrderLayout";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { notIssuedWarning } from "../../../../src/sheets/journalEntry/journalEntrySheet";
import { a1 } from "../../../../src/workbook/address";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { addressBeside, rowsOf, typeBeside } from "../../../support/bid";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { cellsOf, smallOrder, type Line } from "../../../support/smallOrder";

jest.setTimeout(180_000);

const DAY = 46_174;
/** Each run makes workbooks and calculates them. */
const RUNS = { numRuns: 12 };

const ITEMS = ["panels", "ridge", "hip", "valley", "nails"] as const;
const inDollars = (cents: number): number => cents / 100;

const order = fc.uniqueArray(
  fc.tuple(fc.constantFrom(...ITEMS), fc.integer({ min: 1, max: 3000 }), fc.nat(50_000).map(inDollars)),
  { selector: ([item]) => item, minLength: 1 },
);
const perMille = fc.integer({ min: 0, max: 300 }).map((rate) => rate / 1000);
const terms = fc.record({
  overhead: perMille,
  profit: perMille,
  tax: perMille,
  rounding: fc.constantFrom("each line", "on the total"),
});
type Terms = typeof terms extends fc.Arbitrary<infer T> ? T : never;

/** A workbook in which these orders were signed one after the other. */
const signed = async (...orders: (readonly Line[])[]): Promise<PlanWorkbook> => {
  const most = Math.max(...orders.map(({ length }) => length));
  const filledUp = (lines: readonly Line[]): (string | number | null)[][] =>
    Array.from({ length: most }, (_, index) => {
      const line = lines[index];
      return line ? cellsOf(line) : cellsOf(["", null, null]).map(() => null);
    });
  const bid = new PlanWorkbook(smallOrder(orders[0] ?? []));
  for (const lines of orders) {
    filledUp(lines).forEach((line, index) => {
      line.forEach((value, column) => {
        bid.type("Order", a1({ row: index + 2, column }), value);
      });
    });
    await freezeOrder(bid.host, DAY);
  }
  return bid;
};

const setTerms = (bid: PlanWorkbook, sheet: string, set: Terms): Promise<void> =>
  typeBeside(bid, sheet, 3, {
    "Overhead on cost": set.overhead,
    "Profit on cost and overhead": set.profit,
    "Both, on deductions": "given back",
    "Sales tax, state and local": set.tax,
    "Tax is rounded": set.rounding,
  });

const change = async (bid: PlanWorkbook, base: string, now: string): Promise<string> => {
  const { sheets } = await addChangeOrder(bid.host, {
    base,
    now: { kind: "signed", sheet: now },
    dateSerial: DAY,
  });
  return sheets[0] ?? "";
};

const amountOf = async (bid: PlanWorkbook, sheet: string, label: string): Promise<number> => {
  const cell = (await rowsOf(bid, sheet)).find((row) => row[9] === label)?.[12];
  if (typeof cell !== "number") throw new Error(`${label} on "${sheet}" is ${String(cell)}`);
  return cell;
};

const centsOf = async (bid: PlanWorkbook, sheet: string, label: string): Promise<number> => {
  const amount = await amountOf(bid, sheet, label);
  const cents = Math.round(amount * 100);
  // Whole cents, and nothing below them.
  expect(amount).toBe(cents / 100);
  return cents;
};

const worthInCents = (lines: readonly Line[]): number =>
  lines.reduce((sum, [, quantity, price]) => sum + Number(quantity) * Math.round(Number(price) * 100), 0);

describe("change orders", () => {
  it("make the new sum out of the base, to the cent, for a chain of changes", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(order, { minLength: 3, maxLength: 3 }), terms, async (orders, set) => {
        const bid = await signed(...orders);
        const first = await change(bid, "Signed 1", "Signed 2");
        await setTerms(bid, first, set);
        bid.type(first, await addressBeside(bid, first, "Contract sum as signed", 3), 100_000);
        const second = await change(bid, "Signed 2", "Signed 3");
        let material = 0;
        let totals = 0;
        for (const sheet of [first, second]) {
          material += await centsOf(bid, sheet, "Material, additions");
          material += await centsOf(bid, sheet, "Material, deductions");
          totals += await centsOf(bid, sheet, "Total of this change");
        }
        expect(material).toBe(worthInCents(orders[2] ?? []) - worthInCents(orders[0] ?? []));
        expect(await centsOf(bid, second, "Contract sum now")).toBe(10_000_000 + totals);
        bid.dispose();
      }),
      RUNS,
    );
  });

  it("come to nothing with the change that takes them back", async () => {
    await fc.assert(
      fc.asyncProperty(order, order, terms, fc.nat(900).map(inDollars), async (before, after, set, labor) => {
        const bid = await signed(before, after);
        const there = await change(bid, "Signed 1", "Signed 2");
        await setTerms(bid, there, set);
        // Labor and exemption are said once, and go on.
        const [item] = [...before, ...after][0] as Line;
        bid.type(there, await addressBeside(bid, there, String(item), 13), labor);
        bid.type(there, await addressBeside(bid, there, String(item), 15), "no");
        const back = await change(bid, "Signed 2", "Signed 1");
        await setTerms(bid, back, set);
        expect(
          (await centsOf(bid, there, "Total of this change")) +
            (await centsOf(bid, back, "Total of this change")),
        ).toBe(0);
        expect(await amountOf(bid, back, "Changes to date")).toBe(0);
        bid.dispose();
      }),
      RUNS,
    );
  });

  it("each stand as issued: where one takes back what two added a cent may stay, and the sheet says so", async () => {
    const bid = new PlanWorkbook(smallOrder([["panels", 10, 0.5]]));
    await freezeOrder(bid.host, DAY);
    const sheets: string[] = [];
    for (const quantity of [11, 12, 10]) {
      bid.type("Order", "G3", quantity);
      const base = `Signed ${sheets.length + 1}`;
      const added = await addChangeOrder(bid.host, { base, now: { kind: "frozen" }, dateSerial: DAY });
      sheets.push(String(added.sheets[0]));
      // 1 % of 0.50 is half a cent, twice; of 1.00 it is a whole one.
      if (sheets.length === 1)
        await typeBeside(bid, "Change order 1", 3, {
          "Sales tax, state and local": 0.01,
          "Contract sum as signed": 1000,
        });
    }
    const totals = [];
    for (const sheet of sheets) totals.push(await amountOf(bid, sheet, "Total of this change"));
    expect(totals).toEqual([0.51, 0.51, -1.01]);
    expect(await amountOf(bid, "Change order 3", "Contract sum now")).toBe(1000.01);
    const toDate = (await rowsOf(bid, "Change order 3")).find((row) => row[9] === "Changes to date");
    expect([toDate?.[AMOUNT_COLUMNS.value], toDate?.[AMOUNT_COLUMNS.note]]).toEqual([
      0.01,
      "each change is rounded separately: undone in parts, a cent may remain",
    ]);
    bid.dispose();
  });

  it("don't depend on the order of the lines", async () => {
    await fc.assert(
      fc.asyncProperty(order, order, terms, async (before, after, set) => {
        const totals = [];
        for (const [base, now] of [
          [before, after],
          [[...before].reverse(), [...after].reverse()],
        ] as const) {
          const bid = await signed(base, now);
          const sheet = await change(bid, "Signed 1", "Signed 2");
          await setTerms(bid, sheet, set);
          totals.push(await centsOf(bid, sheet, "Total of this change"));
          bid.dispose();
        }
        expect(totals[0]).toBe(totals[1]);
      }),
      RUNS,
    );
  });

  it("are posted with debit equal to credit, whichever way they go", async () => {
    await fc.assert(
      fc.asyncProperty(order, order, terms, perMille, async (before, after, set, retainage) => {
        const bid = await signed(before, after);
        const sheet = await change(bid, "Signed 1", "Signed 2");
        await setTerms(bid, sheet, set);
        bid.type(sheet, await addressBeside(bid, sheet, "Retainage", 3), retainage);
        await addJournalEntry(bid.host, sheet, {
          receivable: "1200",
          retainage: "1250",
          revenue: "4000",
          tax: "2200",
        });
        const rows = await rowsOf(bid, "Ledger 1");
        const total = rows.find((row) => row[2] === "Total");
        expect(total?.[3]).toBe(total?.[4]);
        // Neither edited nor out of balance.
        expect(rows[2]?.[0]).toBe(notIssuedWarning(sheet));
        const [billed, heldBack] = [4, 5].map((row) => Number(rows[row]?.[3]) - Number(rows[row]?.[4])) as [
          number,
          number,
        ];
        expect(Math.round((billed + heldBack) * 100)).toBe(await centsOf(bid, sheet, "Total of this change"));
        bid.dispose();
      }),
      RUNS,
    );
  });
});
