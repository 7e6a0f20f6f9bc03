import type { Contents } from "./contents";

/**
 * The next of `Signed 1`, `Signed 2` ...: one more than the highest number in any sheet's name or title. A renamed sheet keeps
 * its number in its title.
 */
export const nextSheetName = (prefix: string, { sheets }: Contents): string => {
  const pattern = new RegExp(`^${prefix} (\\d+)(?:$|:)`, "i");
  const namesAndTitles = [...sheets].flatMap(([name, { cells }]) => [name, String(cells[0]?.[0] ?? "")]);
  const numbers = namesAndTitles.map((text) => Number(pattern.exec(text)?.[1] ?? 0));
  return `${prefix} ${Math.max(0, ...numbers) + 1}`;
};
