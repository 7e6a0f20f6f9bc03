import { ArrayValueObject, StringValueObject, ValueObjectFactory } from "@univerjs/engine-formula";
import { splitArrayLiteral } from "./arrayLiteral";

/**
 * Two habits of the engine, mended in the one place where it makes a value out of a literal:
 * - It reads a text literal that looks like a date, a time, a percentage or a sum of money as a number: "6:12" reaches a
 *   function as 0.2583. A spreadsheet passes the text, and the same text in a cell stays text here too. A literal is the
 *   only raw value that still has its double quotes, so it can be told apart.
 * - It splits an array literal at every comma and semicolon, those inside a text too: {"1, 1/2",2} becomes three cells.
 * Everything else goes on as before. The wrapping lasts for the life of the page or process; a second call changes nothing.
 */
const wrapped = new WeakSet<typeof ValueObjectFactory.create>();

type Create = typeof ValueObjectFactory.create;

const readText = (raw: string): string | undefined =>
  /^\s*"((?:[^"]|"")*)"\s*$/.exec(raw)?.[1]?.replaceAll('""', '"');

const arrayOf = (rows: readonly (readonly string[])[], create: Create) =>
  ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map((item) => create(item))),
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });

export const keepTextLiterals = (): void => {
  const original = ValueObjectFactory.create;
  if (wrapped.has(original)) return;
  const create: Create = (raw, isIgnoreNumberPattern) => {
    if (typeof raw !== "string") return original.call(ValueObjectFactory, raw, isIgnoreNumberPattern);
    const text = readText(raw);
    if (text !== undefined) return StringValueObject.create(text);
    const rows = splitArrayLiteral(raw);
    return rows ? arrayOf(rows, create) : original.call(ValueObjectFactory, raw, isIgnoreNumberPattern);
  };
  wrapped.add(create);
  ValueObjectFactory.create = create;
};
