import { compareItems } from "./comparisons";
import { keepDoubledQuotes } from "./doubledQuotes";
import { keepEmptyTexts } from "./emptyTexts";
import { noteRangesOnce } from "./notedRanges";
import { keepParsedFormulas } from "./parsedFormulas";
import { keepTableTitles } from "./tableTitles";
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
