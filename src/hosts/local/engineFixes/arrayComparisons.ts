import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * The engine answers A1:A9="x" from an index of the sheet's cells. It does the same for an array that a function returns, such as
 * VSTACK(A1:A4,C1:C4), and then compares the cells from the formula's own cell down instead of the array's items. With the index
 * off, the engine compares item by item. Lasts for the life of the page or process; a second call changes nothing.
 */
export const compareArrayItems = (): void => {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
};
