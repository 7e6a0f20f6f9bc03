/** The lines of the deck section, in order. */
export const DECK_LINES = [
  "underlayment",
  "overhang",
  "wall",
  "iceWidth",
  "iceLength",
  "iceSheet",
  "iceRolls",
  "attic",
  "balanced",
  "vents",
] as const;
export type DeckLine = (typeof DECK_LINES)[number];
