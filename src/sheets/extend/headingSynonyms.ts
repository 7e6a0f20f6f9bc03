import type { Meaning } from "./meanings";

/**
 * What contractors call a parameter in a column heading, in lower case and without the unit. The first match counts, so
 * specific patterns come before general ones. A parameter's own name (`slope length`) is recognized without an entry here.
 */
export const SYNONYMS: readonly (readonly [Meaning, RegExp])[] = [
  ["perPack", /(?:\bper|\/) ?(?:pack|pk|box|bundle|carton|case|pallet)\b|\bpack size\b/],
  ["perPound", /(?:\bper|\/) ?(?:lb|pound)\b/],
  [
    "quantity",
    /\bqty\b|\bquantity\b|\bcount\b|\bpieces\b|\bpcs\b|\bpanels\b|\bneeded\b|\bnumber of\b|\bno\b|^#/,
  ],
  ["waste", /\bwaste\b|\bspare\b|\boverage\b/],
  ["ceilingArea", /\bceiling\b|\battic\b/],
  ["planArea", /\b(?:plan|footprint|floor|level|flat|ground|building|projected)\b.*\barea\b|^footprint$/],
  ["area", /\barea\b|\bsurface\b/],
  ["otherPitch", /\b(?:other|second|adjoining) (?:pitch|slope)\b/],
  ["minimum", /\bmin(?:imum)?\.? (?:pitch|slope)\b/],
  [
    "slopeLength",
    /\bslop(?:e|ed|ing) (?:len(?:gth)?|lgth|dist(?:ance)?|height|used|measured)\b|\brafters?\b/,
  ],
  [
    "slopeLength",
    /\blen(?:gth)? (?:up|of) (?:the )?slope\b|\bup (?:the )?slope\b|\beaves? to (?:the )?ridge\b/,
  ],
  ["slopeLength", /\bslant (?:length|height)\b/],
  ["overhang", /\boverhangs?\b|\bsoffits?\b/],
  ["length", /\b(?:ridges?|hips?|valleys?|rakes?|gables?|edges?|trim|flashings?|drip|gutters?|perimeter)\b/],
  ["length", /\beaves? (?:trim|starter|edge)\b|\brun length\b|\blength of (?:run|trim|edge)\b/],
  ["run", /\bruns?\b|\bhalf span\b/],
  [
    "pitch",
    /\bpitch(?:es)?\b|\brise\b|\b(?:roof|slope|pitch) angle\b|\b(?:in|on|x|per|over) ?[/:]? ?12\b|[/:] ?12\b/,
  ],
  ["eave", /\beaves?\b|\bwidth\b|\bwide\b|^w$/],
  ["top", /\btop\b/],
  ["length", /\blen(?:gth)?s?\b|\blgth\b|^l$/],
];

/** Money, time and openings aren't measurements of a roof plane. */
export const NOT_A_MEASUREMENT =
  /\b(?:price|cost|rate|amount|labou?r|hours?|date|chimneys?|windows?|doors?|skylights?|eave heights?)\b|[$€£]/;

/** Roof edges: their lengths, or how many there are. */
export const EDGE_WORDS = /\b(?:ridges?|hips?|valleys?|rakes?|gables?|edges?)\b/;
