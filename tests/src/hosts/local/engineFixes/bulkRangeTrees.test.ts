import { RTree } from "@univerjs/core";
import * as fc from "fast-check";
import { addRangesInBulk } from "../../../../../src/hosts/local/engineFixes/bulkRangeTrees";
import { engineWithout } from "../engineWithout";

const UNIT = "book";
const SHEET = "bid";

const area = fc
  .tuple(fc.nat(40), fc.nat(15), fc.nat(40), fc.nat(15))
  .map(([startRow, startColumn, rows, columns]) => ({
    startRow,
    startColumn,
    endRow: startRow + rows,
    endColumn: startColumn + columns,
  }));

type Area = { startRow: number; startColumn: number; endRow: number; endColumn: number };

const at = (range: Area, id = 0) => ({ unitId: UNIT, sheetId: SHEET, range, id });

const step = fc.oneof(
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("insert" as const), area }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("search" as const), area }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("remove" as const), which: fc.nat() }) },
);

const overlap = (one: Area, other: Area): boolean =>
  one.startRow <= other.endRow &&
  other.startRow <= one.endRow &&
  one.startColumn <= other.endColumn &&
  other.startColumn <= one.endColumn;

describe("the tree of ranges that formulas read", () => {
  beforeAll(addRangesInBulk);

  it("finds what overlaps an area, whatever was added and removed before", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const tree = new RTree();
        const ranges = new Map<number, Area>();
        steps.forEach((each, id) => {
          if (each.kind === "insert") {
            tree.insert(at(each.area, id));
            ranges.set(id, each.area);
          } else if (each.kind === "remove") {
            const [known, range] = [...ranges][each.which % ranges.size] ?? [];
            if (known === undefined || range === undefined) return;
            tree.remove(at(range, known));
            ranges.delete(known);
          } else {
            const expected = [...ranges]
              .filter(([, range]) => overlap(range, each.area))
              .map(([known]) => known);
            expect([...tree.bulkSearch([at(each.area)])].sort((a, b) => Number(a) - Number(b))).toEqual(
              expected,
            );
          }
        });
      }),
    );
  });

  it("is the same tree after it was written as JSON and read again", () => {
    const tree = new RTree();
    const range = { startRow: 1, startColumn: 1, endRow: 4, endColumn: 2 };
    tree.insert(at(range, 7));
    const copy = new RTree();
    copy.fromJSON(JSON.parse(JSON.stringify(tree.toJSON())) as ReturnType<RTree["toJSON"]>);
    expect([...copy.bulkSearch([at(range)])]).toEqual([7]);
  });

  /** How many ranges are in place before anybody searches. */
  const inPlace = (tree: RTree): number => {
    for (let row = 0; row < 5; row++)
      tree.insert(at({ startRow: row, startColumn: 0, endRow: row + 1, endColumn: 3 }, row));
    const { data } = tree.getTree(UNIT, SHEET) as unknown as { data: { children: readonly unknown[] } };
    return data.children.length;
  };

  it("takes ranges in bulk at the first search", () => {
    expect(inPlace(new RTree())).toBe(0);
  });

  it("takes each range singly without the fix", () => {
    const { core } = engineWithout("bulkRangeTrees", "addRangesInBulk");
    expect(inPlace(new core.RTree())).toBe(5);
  });
});
