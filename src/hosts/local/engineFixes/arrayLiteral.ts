/** One item of an array literal and the delimiter after it. A quoted text may hold any delimiter. */
const ITEM = /\s*((?:"(?:[^"]|"")*"|[^",;{}])*)\s*([,;]|$)/y;

/**
 * The items of an array literal, row by row: `{1,2;3,"a, b"}` is [["1","2"],["3","\"a, b\""]].
 * undefined for anything that isn't an array literal, or whose rows differ in length.
 */
export const splitArrayLiteral = (raw: string): string[][] | undefined => {
  const inside = /^\s*\{([\s\S]*)\}\s*$/.exec(raw)?.[1];
  if (inside === undefined) return undefined;
  const rows: string[][] = [[]];
  ITEM.lastIndex = 0;
  for (let delimiter: string | undefined = ","; delimiter !== "";) {
    const match = ITEM.exec(inside);
    if (!match) return undefined;
    rows.at(-1)?.push((match[1] ?? "").trim());
    delimiter = match[2] ?? "";
    if (delimiter === ";") rows.push([]);
  }
  return rows.every((row) => row.length === rows[0]?.length) ? rows : undefined;
};
