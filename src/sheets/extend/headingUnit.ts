import type { UnitName } from "./unit";

/** A heading in lower case without its unit, and the unit if the heading names one. */
export interface HeadingWords {
  readonly words: string;
  readonly unit?: UnitName;
}

/** Ways to write a unit in a heading. The first match counts, so square feet come before feet. */
const UNIT_WORDS: readonly (readonly [UnitName, RegExp])[] = [
  ["sqFt", /\b(?:sq(?:uare)?\.? ?(?:ft|feet|foot)|sqft|sf|ft ?(?:2|\^2|²))(?![a-z0-9])\.?/],
  ["sqM", /\b(?:sq(?:uare)?\.? ?(?:m|met(?:er|re)s?)|sqm|m ?(?:2|\^2|²))(?![a-z0-9])/],
  ["sqYd", /\b(?:sq(?:uare)?\.? ?(?:yds?|yards?)|sy)\b/],
  ["squares", /\b(?:squares?|sqs?)\b/],
  ["ft", /\b(?:lin(?:eal|ear)?\.? ?(?:ft|feet|foot)|lf|lnft|ft|feet|foot)\b\.?|(?<![a-z])'(?![a-z'])/],
  ["mm", /\b(?:mm|millimet(?:er|re)s?)\b/],
  ["cm", /\b(?:cm|centimet(?:er|re)s?)\b/],
  ["m", /\b(?:met(?:er|re)s?|m)$/],
  ["yd", /\b(?:yds?|yards?)\b/],
  ["degrees", /\bdeg(?:rees?)?\b\.?|°/],
  ["percent", /%|\b(?:percent|pct)\b/],
  // Last, and only at the end of a heading: "in" is also a preposition.
  ["in", /\b(?:inches|inch|ins?)$|"$|''$/],
];

/** In `6 in 12`, "in 12" is the run of a pitch, not a unit. */
const RUN_OF_TWELVE = /\b(?:in|on|per|over|:|\/|x) ?12\b|[x#] ?[:/] ?12\b/;

const tidy = (heading: string): string =>
  heading
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[′’]/g, "'")
    .replace(/[″”]/g, '"')
    .replace(/[()[\]{},;_\s–—]+| - /g, " ")
    .replace(/\. ?$/, "")
    .trim();

const IN_BRACKETS = /[([{]([^()[\]{}]*)[)\]}]/g;

/** The text in brackets, and the rest of the heading: in `Eave (in) gross` the unit isn't at the end. */
const piecesOf = (heading: string): string[] => [
  ...[...heading.matchAll(IN_BRACKETS)].map(([, inside = ""]) => tidy(inside)),
  tidy(heading.replace(IN_BRACKETS, " ")),
];

export const readHeading = (heading: string): HeadingWords => {
  const words = tidy(heading);
  if (RUN_OF_TWELVE.test(words)) return { words, unit: "rise" };
  for (const [unit, pattern] of UNIT_WORDS)
    if (pattern.test(words)) return { words: words.replace(pattern, " ").replace(/\s+/g, " ").trim(), unit };
  for (const piece of piecesOf(heading))
    for (const [unit, pattern] of UNIT_WORDS) if (pattern.test(piece)) return { words, unit };
  return { words };
};
