import { ArrayValueObject, StringValueObject, ValueObjectFactory } from "@univerjs/engine-formula";
import { splitArrayLiteral } from "./arrayLiteral";

type Create = typeof ValueObjectFactory.create;

const wrapped = new WeakSet<Create>();

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

/**
 * Fixes two faults where the engine makes a value from a literal:
 * - It reads a text literal that looks like a date, a time, a percentage or an amount of money as a number: "6:12" reaches a
 *   function as 0.2583. Other spreadsheets pass the text. Only a literal still has its double quotes here, which tells it apart.
 * - It splits an array literal at every comma and semicolon, even inside a text: {"1, 1/2",2} becomes three cells.
 * Lasts for the life of the page or process; a second call changes nothing.
 */
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
