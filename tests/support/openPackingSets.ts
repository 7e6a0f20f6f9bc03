import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** The open sets of one-dimensional bin packing, if they are available, are next to the repository. */
const FOLDER = join(__dirname, "../../../shared/data");

export interface PackingSet {
  readonly name: string;
  readonly capacity: number;
  readonly sizes: readonly number[];
}

export const hasOpenSets = existsSync(FOLDER);

const wordsOf = (file: string): string[] => readFileSync(join(FOLDER, file), "utf8").trim().split(/\s+/);

/** File format: the number of sets; then for each its name, capacity, number of sizes, best known count, and the sizes. */
export const packingSets = (file: string): PackingSet[] => {
  const words = wordsOf(file);
  const sets: PackingSet[] = [];
  for (let at = 1; at < words.length;) {
    const [name = "", capacity, count] = words.slice(at, at + 3);
    const from = at + 4;
    at = from + Number(count);
    sets.push({ name, capacity: Number(capacity), sizes: words.slice(from, at).map(Number) });
  }
  return sets;
};

/** File format: the number of sizes, the capacity, the sizes. */
export const packingSet = (file: string): PackingSet => {
  const [count, capacity = NaN, ...sizes] = wordsOf(file).map(Number);
  return { name: file, capacity, sizes: sizes.slice(0, count) };
};
