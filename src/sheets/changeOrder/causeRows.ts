import type { ItemCauses } from "./causes";

/** A row of the list of causes: the item, a cause, or both. */
export interface CauseRow {
  readonly about: string;
  readonly sentence: string;
}

interface Group {
  readonly items: readonly string[];
  readonly sentences: readonly string[];
}

/** Items with exactly the same causes are listed together. Where only some causes are the same, each item lists its own. */
const groupsOf = (causes: readonly ItemCauses[]): Group[] => {
  const groups = new Map<string, Group>();
  for (const { item, sentences } of causes) {
    const reasons = sentences.join("\n");
    groups.set(reasons, { items: [...(groups.get(reasons)?.items ?? []), item], sentences });
  }
  return [...groups.values()];
};

/** A row a sentence, its item before the first; the names of several items have a row of their own, for want of room. */
export const causeRows = (causes: readonly ItemCauses[]): CauseRow[] =>
  groupsOf(causes).flatMap(({ items, sentences }): CauseRow[] => {
    const [only = "", ...others] = items;
    return others.length > 0
      ? [
          { about: `each of ${items.join(", ")}`, sentence: "" },
          ...sentences.map((sentence) => ({ about: "", sentence })),
        ]
      : sentences.map((sentence, index) => ({ about: index === 0 ? only : "", sentence }));
  });
