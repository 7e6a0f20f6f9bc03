import { compareArrayItems } from "./arrayComparisons";
import { keepDoubledQuotes } from "./doubledQuotes";
import { keepEmptyTexts } from "./emptyTexts";
import { registerRangesOnce } from "./rangeDependencies";
import { keepParsedFormulas } from "./formulaCache";
import { escapeTableHeadings } from "./tableHeadings";
import { keepTextLiterals } from "./textLiterals";

/** What the engine must be told before it is made. */
export const applyEngineFixes = (): void => {
  keepTextLiterals();
  compareArrayItems();
  keepDoubledQuotes();
  keepEmptyTexts();
  escapeTableHeadings();
  keepParsedFormulas();
  registerRangesOnce();
};
