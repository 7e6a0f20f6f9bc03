import fc from "fast-check";
import { areaAddress, addressesIn, readArea } from "../../../src/workbook/address";
import { contiguousAreas } from "../../../src/workbook/contiguousAreas";

const places = (...areas: string[]) => areas.flatMap((area) => addressesIn(readArea(area)));

describe("the blocks that places fill", () => {
  it("joins runs of the same rows side by side, and no others", () => {
    expect(contiguousAreas(places("B2:C4", "D2:D3", "F2")).map(areaAddress)).toEqual([
      "B2:C4",
      "D2:D3",
      "F2",
    ]);
    expect(contiguousAreas(places("A1:A2", "A4")).map(areaAddress)).toEqual(["A1:A2", "A4"]);
    expect(contiguousAreas([])).toEqual([]);
  });

  it("hold every place once, and nothing else", () => {
    const place = fc.record({ row: fc.nat(6), column: fc.nat(6) });
    const some = fc.uniqueArray(place, { selector: ({ row, column }) => `${row} ${column}` });
    fc.assert(
      fc.property(some, (given) => {
        const held = contiguousAreas(given).flatMap(addressesIn);
        expect(held).toHaveLength(given.length);
        expect(held).toEqual(expect.arrayContaining(given));
      }),
    );
  });
});
