import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

type Rows = Set<number>;
/** The rows of a column that hold each value. */
type Column = Map<unknown, Rows>;

/** The members of the engine's index of values that the fix uses, private ones included. */
interface ValueIndex {
  readonly _cache: Map<string, Map<string, Map<number, Column>>>;
  set(
    unitId: string,
    sheetId: string,
    column: number,
    value: unknown,
    row: number,
    isForceUpdate?: boolean,
  ): void;
  shouldContinueBuildingCache(unitId: string, sheetId: string, column: number, row: number): boolean;
}

/** A column that knows under which value each row is, and moves a row that is added under another value. */
class IndexedColumn extends Map<unknown, Rows> {
  private readonly rowsWith = new Map<number, Rows>();

  override set(value: unknown, rows: Rows): this {
    rows.add = (row) => {
      const before = this.rowsWith.get(row);
      if (before !== rows) before?.delete(row);
      this.rowsWith.set(row, rows);
      return Set.prototype.add.call(rows, row) as Rows;
    };
    return super.set(value, rows);
  }
}

const inMap = <K, V>(map: Map<K, V>, key: K, make: () => V): V => {
  const found = map.get(key) ?? make();
  map.set(key, found);
  return found;
};

/**
 * For lookups, the engine keeps an index of each column's values, and at every result it searches all of the column's values for the
 * row's old one: time that grows with the square of the rows, a third of the first calculation in a book of 240,000 formulas. With the
 * fix, each row knows its old value. Lasts for the life of the page or process; a second call changes nothing.
 */
export const indexColumnsByRow = (): void => {
  const index = CELL_INVERTED_INDEX_CACHE as unknown as ValueIndex;
  const engine = Object.getPrototypeOf(index) as ValueIndex;
  /** The same index, which accepts a result for any row without that search. */
  const accepting = Object.create(index, {
    shouldContinueBuildingCache: { value: () => true },
  }) as ValueIndex;
  index.set = (unitId, sheetId, column, value, row, isForceUpdate = false) => {
    const sheets = inMap(index._cache, unitId, () => new Map<string, Map<number, Column>>());
    const columns = inMap(sheets, sheetId, () => new Map<number, Column>());
    inMap(columns, column, () => new IndexedColumn());
    engine.set.call(isForceUpdate ? accepting : index, unitId, sheetId, column, value, row, false);
  };
};
