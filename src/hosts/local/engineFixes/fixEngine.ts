import { compareItems } from "./arrayComparisons";
import { keepDoubledQuotes } from "./doubledQuotes";
import { keepEmptyTexts } from "./emptyTexts";
import { noteRangesOnce } from "./rangeDependencies";
import { keepParsedFormulas } from "./formulaCache";
import { keepTableTitles } from "./tableHeadings";
import { keepTextLiterals } from "./textLiterals";

/** What the engine must be told before it is made. */
export const mendEngine = (): void => {
  keepTextLiterals();
  compareItems();
  keepDoubledQuotes();
  keepEmptyTexts();
  keepTableTitles();
  keepParsedFormulas();
  noteRangesOnce();
};
