import type { Contents } from "./contents";

/**
 * The next of `Signed 1`, `Signed 2` ...: after the highest that a sheet bears in its name, or in its title, which keeps the number
 * of one that was renamed.
 */
export const nextSheetName = (word: string, { sheets }: Contents): string => {
  const pattern = new RegExp(`^${word} (\\d+)(?:$|:)`, "i");
  const borne = [...sheets].flatMap(([name, { cells }]) => [name, String(cells[0]?.[0] ?? "")]);
  const numbers = borne.map((words) => Number(pattern.exec(words)?.[1] ?? 0));
  return `${word} ${Math.max(0, ...numbers) + 1}`;
};
