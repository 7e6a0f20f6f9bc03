import { whyRows } from "../../../../src/sheets/changeOrder/whyRows";

const why = (item: string, ...sentences: string[]) => ({ item, sentences });
const rowsOf = (...whys: Parameters<typeof whyRows>[0]): string[] =>
  whyRows(whys).map(({ about, sentence }) => `${about}|${sentence}`);

describe("the list of whys", () => {
  it("has an item before its first sentence", () => {
    expect(rowsOf(why("panels", "a", "b"), why("hip", "c"))).toEqual(["panels|a", "|b", "hip|c"]);
  });

  it("says once what is all that is so of several items, below their names", () => {
    expect(rowsOf(why("clips", "a", "b"), why("panels", "c"), why("nails", "a", "b"))).toEqual([
      "each of clips, nails|",
      "|a",
      "|b",
      "panels|c",
    ]);
  });

  it("says of each item all that moved it, before what came of that, where they share only a part", () => {
    expect(rowsOf(why("clips", "a", "b", "16 more"), why("nails", "a", "b", "10 more"))).toEqual([
      "clips|a",
      "|b",
      "|16 more",
      "nails|a",
      "|b",
      "|10 more",
    ]);
  });

  it("leaves what is about no item as it is", () => {
    expect(rowsOf(why("", "can't be followed"))).toEqual(["|can't be followed"]);
  });
});
