import { compareArrayItems } from "./arrayComparisons";
import { addRangesInBulk } from "./bulkRangeTrees";
import { indexColumnsByRow } from "./columnIndexes";
import { keepDoubledQuotes } from "./doubledQuotes";
import { keepEmptyTexts } from "./emptyTexts";
import { drawMissingFontsAsSansSerif } from "./fontFallback";
import { keepParsedFormulas } from "./formulaCache";
import { registerRangesOnce } from "./rangeDependencies";
import { keepRanges } from "./keptRanges";
import { escapeTableHeadings } from "./tableHeadings";
import { keepTextLiterals } from "./textLiterals";

/** Applies the fixes that the engine needs before it is created. A second call changes nothing. */
export const applyFixesBeforeStart = (): void => {
  keepTextLiterals();
  compareArrayItems();
  keepDoubledQuotes();
  keepEmptyTexts();
  escapeTableHeadings();
  keepParsedFormulas();
  registerRangesOnce();
  addRangesInBulk();
  keepRanges();
  indexColumnsByRow();
  drawMissingFontsAsSansSerif();
};
