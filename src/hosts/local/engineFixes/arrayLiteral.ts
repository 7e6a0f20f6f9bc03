/** One item of an array literal with the sign after it: a quoted text may hold any sign. */
const ITEM = /\s*((?:"(?:[^"]|"")*"|[^",;{}])*)\s*([,;]|$)/y;

/**
 * The items of an array literal, row by row: `{1,2;3,"a, b"}` is [["1","2"],["3","\"a, b\""]].
 * undefined for anything that is no array literal, or whose rows are not of one length.
 */
export const splitArrayLiteral = (raw: string): string[][] | undefined => {
  const inside = /^\s*\{([\s\S]*)\}\s*$/.exec(raw)?.[1];
  if (inside === undefined) return undefined;
  const rows: string[][] = [[]];
  ITEM.lastIndex = 0;
  for (let sign: string | undefined = ","; sign !== "";) {
    const match = ITEM.exec(inside);
    if (!match) return undefined;
    rows.at(-1)?.push((match[1] ?? "").trim());
    sign = match[2] ?? "";
    if (sign === ";") rows.push([]);
  }
  return rows.every((row) => row.length === rows[0]?.length) ? rows : undefined;
};
