import { causeRows } from "../../../../src/sheets/changeOrder/causeRows";

const causes = (item: string, ...sentences: string[]) => ({ item, sentences });
const rowsOf = (...causes: Parameters<typeof causeRows>[0]): string[] =>
  causeRows(causes).map(({ about, sentence }) => `${about}|${sentence}`);

describe("the list of causes", () => {
  it("has an item before its first sentence", () => {
    expect(rowsOf(causes("panels", "a", "b"), causes("hip", "c"))).toEqual(["panels|a", "|b", "hip|c"]);
  });

  it("says once what is all that is so of several items, below their names", () => {
    expect(rowsOf(causes("clips", "a", "b"), causes("panels", "c"), causes("nails", "a", "b"))).toEqual([
      "each of clips, nails|",
      "|a",
      "|b",
      "panels|c",
    ]);
  });

  it("says of each item all that moved it, before what came of that, where they share only a part", () => {
    expect(rowsOf(causes("clips", "a", "b", "16 more"), causes("nails", "a", "b", "10 more"))).toEqual([
      "clips|a",
      "|b",
      "|16 more",
      "nails|a",
      "|b",
      "|10 more",
    ]);
  });

  it("leaves what is about no item as it is", () => {
    expect(rowsOf(causes("", "can't be followed"))).toEqual(["|can't be followed"]);
  });
});
