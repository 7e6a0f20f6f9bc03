import type { CellContent } from "../../../workbook/plan";
import { needsApostrophe } from "../../../workbook/needsApostrophe";

/**
 * What goes into a range's `formulas`. Office.js takes them as American English has them, commas between arguments and
 * points in decimals, whatever the language of Excel, and shows them in that language: nothing is to be translated.
 */
export const toCellInput = (content: CellContent): string | number => {
  switch (content.kind) {
    case "text":
      return needsApostrophe(content.text) ? `'${content.text}` : content.text;
    case "number":
      return content.number;
    case "formula":
      return content.formula;
  }
};
