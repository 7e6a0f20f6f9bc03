/** Words that people use for a word of the help. From common practice; no published source. */
const SYNONYMS: Readonly<Record<string, string>> = {
  felt: "underlayment",
  paper: "underlayment",
  tarpaper: "underlayment",
  row: "course",
  rake: "gable",
  long: "length",
  steep: "pitch",
  cost: "price",
  scrap: "waste",
  leftover: "waste",
  bundle: "pack",
  box: "pack",
  carton: "pack",
  shingle: "panel",
  screw: "nail",
  fastener: "nail",
  flashing: "trim",
  cap: "trim",
  gutter: "eave",
  drip: "trim",
  profit: "markup",
  overhead: "markup",
  skylight: "opening",
  board: "deck",
  shield: "barrier",
};

/** Longer words lose their plural s; `gas` and `us` keep it. */
const singular = (word: string): string => (word.length > 3 ? word.replace(/s$/, "") : word);

/** What to search for when someone types a word: its singular, and the help's own word for it. */
export const searchTerms = (word: string): string[] => {
  const one = singular(word);
  const other = SYNONYMS[one] ?? SYNONYMS[one.replace(/e$/, "")];
  return other === undefined ? [one] : [one, other];
};
