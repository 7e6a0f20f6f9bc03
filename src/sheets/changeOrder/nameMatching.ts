import type { Measurement } from "../trace/measurements";
import { parsedValue } from "./measurementText";

/** Measures of an earlier time under the names of a later one. */
export interface Matched {
  readonly earlier: readonly Measurement[];
  /** Without leftovers of removed rows. */
  readonly later: readonly Measurement[];
  /** Renamed rows: the earlier name by `rowKey` of the later one. */
  readonly formerNames: ReadonlyMap<string, string>;
}

export const rowKey = ({ sheet, row }: Pick<Measurement, "sheet" | "row">): string => `${sheet}\n${row}`;

/** Which row names are items of the orders: an item counts as renamed only where nothing else fits. */
export interface ItemNames {
  isItem(name: string): boolean;
  mayBeRenamed(former: string, now: string): boolean;
}

const SHARED_AT_LEAST = 0.5;
/** Fewer inputs than these may be alike by chance. */
const TELLING_INPUTS = 2;

const cellKey = ({ row, heading }: Measurement): string => `${row}\n${heading}`;

const groupedBy = <T>(items: readonly T[], keyOf: (item: T) => string): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
};

interface Pair<T> {
  readonly then: T;
  readonly now: T;
  /** Compared in sequence; the greater number wins. */
  readonly likeness: readonly number[];
}

/** Pairs of two lists, the most alike first, each element once; ties keep their sequence. */
const likestPairs = <T>(pairs: readonly Pair<T>[]): Pair<T>[] => {
  const taken = new Set<T>();
  return [...pairs]
    .sort((a, b) => {
      const at = a.likeness.findIndex((value, index) => value !== b.likeness[index]);
      return at < 0 ? 0 : (b.likeness[at] ?? 0) - (a.likeness[at] ?? 0);
    })
    .filter(({ then, now }) => {
      if (taken.has(then) || taken.has(now)) return false;
      taken.add(then);
      taken.add(now);
      return true;
    });
};

/** Renamed sheets, found by contents: at least half of the rows and headings are the same. */
const renamedSheets = (
  earlier: readonly Measurement[],
  later: readonly Measurement[],
): ReadonlyMap<string, string> => {
  const [then, now] = [earlier, later].map((measurements) =>
    groupedBy(measurements, ({ sheet }) => sheet),
  ) as [ReadonlyMap<string, readonly Measurement[]>, ReadonlyMap<string, readonly Measurement[]>];
  const pairs = [...then]
    .filter(([name]) => !now.has(name))
    .flatMap(([from, old]) =>
      [...now]
        .filter(([name]) => !then.has(name))
        .flatMap(([to, current]): Pair<string>[] => {
          const values = new Map(
            current.map((measurement) => [cellKey(measurement), parsedValue(measurement)]),
          );
          const shared = old.filter((measurement) => values.has(cellKey(measurement)));
          const equal = shared.filter(
            (measurement) => values.get(cellKey(measurement)) === parsedValue(measurement),
          );
          if (shared.length < SHARED_AT_LEAST * Math.max(old.length, current.length)) return [];
          return [{ then: from, now: to, likeness: [equal.length, shared.length] }];
        }),
    );
  return new Map(likestPairs(pairs).map(({ then: from, now: to }) => [from, to]));
};

/** A row with its inputs. */
interface Row {
  readonly name: string;
  readonly inputs: ReadonlyMap<string, Measurement["value"]>;
}

const rowsOf = (measurements: readonly Measurement[]): Row[] =>
  [
    ...groupedBy(
      measurements.filter(({ kind }) => kind === "input"),
      ({ row }) => row,
    ),
  ].map(([name, inputs]) => ({
    name,
    inputs: new Map(inputs.map((measurement) => [measurement.heading, parsedValue(measurement)])),
  }));

const sharedInputs = (then: Row, now: Row): number =>
  [...then.inputs].filter(([heading, value]) => now.inputs.get(heading) === value).length;

/** Whether all inputs of one row are in another too. */
const isPartOf = (part: Row, whole: Row): boolean => sharedInputs(part, whole) === part.inputs.size;
const isAlike = (then: Row, now: Row): boolean => isPartOf(then, now) && isPartOf(now, then);

const isNameless = ({ name }: Row): boolean => /^row \d+$/.test(name);

/** Rows whose names hang on their number: `Porch`, `Porch (2)`, or those without a name. An item's number belongs to its name. */
const family = (row: Row, { isItem }: ItemNames): string => {
  if (isNameless(row)) return "";
  return (isItem(row.name) ? row.name : row.name.replace(/ \(\d+\)$/, "")).toLowerCase();
};

/** Renumbered rows, found by their inputs. */
const renumbered = (
  then: readonly Row[],
  now: readonly Row[],
  items: ItemNames,
): ReadonlyMap<string, string> => {
  const families = groupedBy(now, (row) => family(row, items));
  const pairs = then.flatMap((old) =>
    (families.get(family(old, items)) ?? []).flatMap((current): Pair<Row>[] => {
      const [shared, isSameName] = [sharedInputs(old, current), old.name === current.name];
      if (shared === 0 && !isSameName) return [];
      return [
        { then: old, now: current, likeness: [Number(isAlike(old, current)), shared, Number(isSameName)] },
      ];
    }),
  );
  return new Map(likestPairs(pairs).map(({ then: old, now: current }) => [old.name, current.name]));
};

interface MatchedRows {
  readonly names: ReadonlyMap<string, string>;
  readonly former: ReadonlyMap<string, string>;
  readonly leftOver: ReadonlySet<string>;
}

/** Rows that hold the same under another name are the same; of items only where one of each time fits, and no more. */
const formerNamesOf = (
  gone: readonly Row[],
  fresh: readonly Row[],
  { isItem, mayBeRenamed }: ItemNames,
): ReadonlyMap<string, string> => {
  const fits = (old: Row, row: Row): boolean =>
    ![old, row].some(isNameless) &&
    old.inputs.size >= TELLING_INPUTS &&
    isAlike(old, row) &&
    mayBeRenamed(old.name, row.name);
  const former = new Map<string, string>();
  for (const old of gone) {
    const [current, ...others] = fresh.filter((row) => !former.has(row.name) && fits(old, row));
    if (!current) continue;
    const isOnly = others.length === 0 && gone.every((other) => other === old || !fits(other, current));
    if (isOnly || !isItem(current.name)) former.set(current.name, old.name);
  }
  return former;
};

const matchedRows = (
  then: readonly Row[],
  now: readonly Row[],
  items: ItemNames,
  isOfOrder: boolean,
): MatchedRows => {
  const sameNames = renumbered(then, now, items);
  const known = new Set(sameNames.values());
  const gone = then.filter(({ name }) => !sameNames.has(name));
  const fresh = now.filter(({ name }) => !known.has(name));
  const former = isOfOrder ? new Map<string, string>() : formerNamesOf(gone, fresh, items);
  const names = new Map([...sameNames, ...[...former].map(([to, from]) => [from, to] as const)]);
  const lost = gone.filter(({ name }) => !names.has(name));
  const leftOver = fresh.filter((row) => isNameless(row) && lost.some((old) => isPartOf(row, old)));
  return { names, former, leftOver: new Set(leftOver.map(({ name }) => name)) };
};

/**
 * Matches earlier measurements to later ones by contents, where sheets were renamed and rows renumbered. Items of the order are
 * never matched this way: their names identify them.
 */
export const matchNames = (
  earlier: readonly Measurement[],
  later: readonly Measurement[],
  orderSheet: string,
  items: ItemNames,
): Matched => {
  const sheets = renamedSheets(earlier, later);
  const moved = earlier.map((measurement) => ({
    ...measurement,
    sheet: sheets.get(measurement.sheet) ?? measurement.sheet,
  }));
  const current = groupedBy(later, ({ sheet }) => sheet);
  const matched = new Map(
    [...groupedBy(moved, ({ sheet }) => sheet)].map(([sheet, old]) => [
      sheet,
      matchedRows(rowsOf(old), rowsOf(current.get(sheet) ?? []), items, sheet === orderSheet),
    ]),
  );
  const nameNow = ({ sheet, row }: Measurement): string => {
    const names = matched.get(sheet)?.names;
    const to = names?.get(row);
    if (to !== undefined) return to;
    // Another row bears its name now.
    return names && [...names.values()].includes(row) ? `${row} (before)` : row;
  };
  return {
    earlier: moved.map((measurement) => ({ ...measurement, row: nameNow(measurement) })),
    later: later.filter(({ sheet, row }) => !matched.get(sheet)?.leftOver.has(row)),
    formerNames: new Map(
      [...matched].flatMap(([sheet, { former }]) =>
        [...former].map(([row, name]): [string, string] => [rowKey({ sheet, row }), name]),
      ),
    ),
  };
};
