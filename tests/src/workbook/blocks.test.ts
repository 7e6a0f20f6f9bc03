import fc from "fast-check";
import { areaInWords, addressesIn, readArea } from "../../../src/workbook/address";
import { blocksOf } from "../../../src/workbook/blocks";

const places = (...areas: string[]) => areas.flatMap((area) => addressesIn(readArea(area)));

describe("the blocks that places fill", () => {
  it("joins runs of the same rows side by side, and no others", () => {
    expect(blocksOf(places("B2:C4", "D2:D3", "F2")).map(areaInWords)).toEqual(["B2:C4", "D2:D3", "F2"]);
    expect(blocksOf(places("A1:A2", "A4")).map(areaInWords)).toEqual(["A1:A2", "A4"]);
    expect(blocksOf([])).toEqual([]);
  });

  it("hold every place once, and nothing else", () => {
    const place = fc.record({ row: fc.nat(6), column: fc.nat(6) });
    const some = fc.uniqueArray(place, { selector: ({ row, column }) => `${row} ${column}` });
    fc.assert(
      fc.property(some, (given) => {
        const held = blocksOf(given).flatMap(addressesIn);
        expect(held).toHaveLength(given.length);
        expect(held).toEqual(expect.arrayContaining(given));
      }),
    );
  });
});
