import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * The engine keeps an index of cells by what they hold, and answers A1:A9="x" from it. But it asks the index for arrays
 * that a function has made too, such as VSTACK(A1:A4,C1:C4), as if they were the cells from the formula's own cell down: the
 * answer is then about other cells. So the index is never asked; the engine compares each item, as it does where the index
 * knows nothing. Lasts for the life of the page or process; a second call changes nothing.
 */
export const compareArrayItems = (): void => {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
};
