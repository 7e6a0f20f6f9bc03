import { itemsOf, type ComparedOrder } from "../../../../src/sheets/changeOrder/comparedOrders";
import type { ReadLine } from "../../../../src/sheets/orderSheet/readOrder";

const PANELS: ReadLine = {
  row: 5,
  item: "panels",
  unit: "panels",
  needed: 720,
  toOrder: 67,
  orderUnit: "packs",
  price: 88,
  waste: 0.1,
  perPack: 12,
};

const side = (line: Partial<ReadLine>, isSealed = true): ComparedOrder => ({
  order: {
    sheet: "Signed 1",
    headingRow: 4,
    lastRow: 5,
    columns: { item: 0 } as ComparedOrder["order"]["columns"],
    lines: [{ ...PANELS, ...line }],
  },
  measurements: [],
  sealed: isSealed
    ? { sheet: "Signed 1", area: { from: { row: 4, column: 0 }, to: { row: 5, column: 0 } }, seal: 1 }
    : undefined,
});

const packed = (base: ComparedOrder, now: ComparedOrder): string | undefined =>
  itemsOf(base, now, new Map())[0]?.orderUnit;

describe("in what an item is ordered", () => {
  it("says what a pack holds and what is added for waste, which lead from the need to the order", () => {
    expect(packed(side({}), side({}))).toBe("packs of 12, 10% waste");
    expect(packed(side({ waste: null }), side({ waste: null }))).toBe("packs of 12");
    expect(packed(side({ perPack: 1, waste: 0.125 }), side({ perPack: 1, waste: 0.125 }))).toBe(
      "packs, 12.5% waste",
    );
    expect(packed(side({ perPack: null, waste: 0 }), side({ perPack: null, waste: 0 }))).toBe("packs");
  });

  it("says nothing where the order doesn't say in what, and the other side's where one doesn't", () => {
    expect(packed(side({ orderUnit: "" }), side({ orderUnit: "" }))).toBe("");
    expect(packed(side({ orderUnit: "" }), side({}))).toBe("packs of 12, 10% waste");
  });

  it("says both where they differ", () => {
    expect(packed(side({}), side({ waste: 0.12 }))).toBe("packs of 12, 10% waste to packs of 12, 12% waste");
  });

  it("says the unit alone as long as one side moves, and its waste with it", () => {
    expect(packed(side({}), side({}, false))).toBe("packs");
  });
});
