import { anyCells } from "../../shared/kinds/anyCells";
import { countOf } from "../../shared/result";
import { sealOf } from "../../shared/seal";
import { defineFunction, required } from "../../shared/spec/spec";

export const sealSpec = defineFunction({
  id: "SEAL",
  concept: "money",
  summary:
    "A number that changes when anything in the cells changes. It reveals edits; it does not stop a forger.",
  parameters: [required("cells", anyCells, "The cells to seal: numbers, text, TRUE or FALSE, blanks.")],
  heading: "Seal",
  result: { ...countOf(""), numberFormat: "0" },
  formula: "the first 48 bits of the SHA-256 of the cells, written row by row as JSON",
  source: "FIPS 180-4 (SHA-256) and RFC 8259 (JSON); numbers to 15 digits, empty text as a blank",
  examples: [
    {
      args: [[["panels", 94, 73.5]]],
      result: 44964588149420,
      from: 'SHA-256 of [["panels",94,73.5]], calculated by another program',
    },
    {
      args: [
        [
          ["panels", 94, 73.5],
          [true, "94", 0.1 + 0.2],
        ],
      ],
      result: 47450529917331,
      from: 'SHA-256 of [["panels",94,73.5],[true,"94",0.3]], calculated by another program',
    },
  ],
  calculate: sealOf,
});
