import type { Why } from "./why";

/** A row of the list of whys: what it is about, what is said of that, or both. */
export interface WhyRow {
  readonly about: string;
  readonly sentence: string;
}

interface Group {
  readonly items: readonly string[];
  readonly sentences: string[];
}

/** Each sentence once, with all items that it is said of; those that are said of the same items together. */
const groupsOf = (whys: readonly Why[]): Group[] => {
  const itemsOf = new Map<string, string[]>();
  for (const { item, sentences } of whys)
    for (const sentence of sentences) itemsOf.set(sentence, [...(itemsOf.get(sentence) ?? []), item]);
  const groups: Group[] = [];
  for (const [sentence, items] of itemsOf) {
    const last = groups.at(-1);
    if (last?.items.join("\n") === items.join("\n")) last.sentences.push(sentence);
    else groups.push({ items, sentences: [sentence] });
  }
  return groups;
};

/** A row a sentence, its item before the first; the names of several items have a row of their own, for want of room. */
export const whyRows = (whys: readonly Why[]): WhyRow[] =>
  groupsOf(whys).flatMap(({ items, sentences }): WhyRow[] => {
    const [only = "", ...others] = items;
    return others.length > 0
      ? [
          { about: `each of ${items.join(", ")}`, sentence: "" },
          ...sentences.map((sentence) => ({ about: "", sentence })),
        ]
      : sentences.map((sentence, index) => ({ about: index === 0 ? only : "", sentence }));
  });
