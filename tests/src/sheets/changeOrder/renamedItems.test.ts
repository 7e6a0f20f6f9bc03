import { renamedItems } from "../../../../src/sheets/changeOrder/renamedItems";
import type { ComparedOrder } from "../../../../src/sheets/changeOrder/comparedOrders";
import { ORDER } from "../../../../src/sheets/orderSheet/orderLayout";

/** An order of some items, each priced, and the sheets that list them; all of them alike. */
const side = (
  prices: Readonly<Record<string, number>>,
  sheets: Readonly<Record<string, string[]>>,
): ComparedOrder => ({
  order: {
    sheet: "Order",
    headingRow: 0,
    lastRow: Object.keys(prices).length,
    columns: ORDER,
    lines: Object.entries(prices).map(([item, price], index) => ({
      row: index + 1,
      item,
      unit: "pieces",
      needed: 5,
      toOrder: 5,
      orderUnit: "",
      price,
      waste: null,
      perPack: null,
    })),
  },
  measurements: Object.entries(sheets).flatMap(([sheet, rows]) =>
    rows.flatMap((row) =>
      (["Follows", "Stock"] as const).map((heading) => ({
        sheet,
        row,
        heading,
        unit: "",
        value: heading === "Follows" ? "eave" : 120,
        kind: "input" as const,
      })),
    ),
  ),
  sealed: undefined,
});

/** Former names by those of now. */
const renamed = (base: ComparedOrder, now: ComparedOrder): unknown =>
  Object.fromEntries([...renamedItems(base, now, "Order")].map(([key, { item }]) => [key, item]));

const BASE = side({ drip: 9, starter: 9 }, { Trims: ["drip", "starter"] });

describe("items of two orders whose names differ", () => {
  it("are the same where one of each fits, whatever the capitals", () => {
    const now = side({ Apron: 9, Starter: 9 }, { Trims: ["Apron", "Starter"] });
    expect(renamed(BASE, now)).toEqual({ apron: "drip" });
  });

  it("are others where two fit", () => {
    expect(renamed(BASE, side({ one: 9, two: 9 }, { Trims: ["one", "two"] }))).toEqual({});
    expect(renamed(BASE, side({ one: 9 }, { Trims: ["one"] }))).toEqual({});
  });

  it("are others where the order itself names both, or has another price", () => {
    const trims = { Trims: ["apron", "starter"] };
    expect(renamed(BASE, side({ apron: 9, drip: 9, starter: 9 }, trims))).toEqual({});
    expect(renamed(BASE, side({ apron: 8, starter: 9 }, trims))).toEqual({});
  });

  it("are others where two sheets that list them disagree", () => {
    const base = side({ drip: 9 }, { Trims: ["drip"], Prices: ["drip"] });
    const now = side({ apron: 9, edge: 9 }, { Trims: ["apron"], Prices: ["edge"] });
    expect(renamed(base, now)).toEqual({});
    expect(renamed(base, side({ apron: 9 }, { Trims: ["apron"], Prices: ["apron"] }))).toEqual({
      apron: "drip",
    });
  });
});
