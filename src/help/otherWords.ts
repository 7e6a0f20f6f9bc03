/** What people say for a word of the help. Common practice, no published source. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
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

/** Long words lose their plural; `gas` and `us` stay. */
const singular = (word: string): string => (word.length > 3 ? word.replace(/s$/, "") : word);

/** What to look for in the place of a person's word: how it begins in the help, and how the help itself says it. */
export const wordsFor = (word: string): string[] => {
  const one = singular(word);
  const other = OTHER_WORDS[one] ?? OTHER_WORDS[one.replace(/e$/, "")];
  return other === undefined ? [one] : [one, other];
};
