import fc from "fast-check";
import { CELL_INVERTED_INDEX_CACHE, ERROR_TYPE_SET } from "@univerjs/engine-formula";
import { applyFixesBeforeStart } from "../../../../../src/hosts/local/engineFixes/applyBeforeStart";
import { unfixedFormulaEngine } from "../engineWithout";

type Index = typeof CELL_INVERTED_INDEX_CACHE;

const VALUES = 400;

/** How many lists of rows are searched when each row of a column gets a value of its own. */
const searches = (index: Index): number => {
  index.clear();
  const has = jest.spyOn(Set.prototype, "has");
  for (let row = 0; row < VALUES; row++) index.set("book", "sheet", 0, `value ${row}`, row, true);
  const { length } = has.mock.calls;
  has.mockRestore();
  index.clear();
  return length;
};

test("a result searches no other values of its column", () => {
  applyFixesBeforeStart();
  expect(searches(CELL_INVERTED_INDEX_CACHE)).toBeLessThan(VALUES * 5);
});

test("without the fix, a result searches all other values of its column", () => {
  expect(searches(unfixedFormulaEngine().CELL_INVERTED_INDEX_CACHE)).toBeGreaterThan((VALUES * VALUES) / 3);
});

const VALUE = fc.constantFrom("a", "A", "b", "", 0, 1, "1", true, null, [...ERROR_TYPE_SET][0] ?? "#N/A");

test("the index holds what the engine's own holds", () => {
  applyFixesBeforeStart();
  const own = unfixedFormulaEngine().CELL_INVERTED_INDEX_CACHE;
  const result = fc.record({ column: fc.nat(1), row: fc.nat(5), value: VALUE });
  fc.assert(
    fc.property(fc.array(result, { maxLength: 40 }), (results) => {
      const [ours, theirs] = [CELL_INVERTED_INDEX_CACHE, own].map((index) => {
        index.clear();
        for (const { column, row, value } of results) index.set("book", "sheet", column, value, row, true);
        const found = [0, 1].map((column) =>
          ["a", "b", 0, 1, true].map((value) =>
            index
              .getCellPositions("book", "sheet", column, value, [[0, 5]])
              ?.matchingRows.sort((a, b) => a - b),
          ),
        );
        index.clear();
        return found;
      });
      expect(ours).toEqual(theirs);
    }),
  );
});
