import type { CellContent } from "../../../workbook/plan";
import { needsApostrophe } from "../../../workbook/needsApostrophe";

/**
 * The value to set in a range's `formulas`. Office.js takes formulas in American English (commas between arguments, decimal
 * points) whatever the language of Excel, and Excel shows them in its own language.
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
