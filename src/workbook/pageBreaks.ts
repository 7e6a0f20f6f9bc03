import { PAPER_PX } from "./pageSetup";

/** The default row height. */
const ROW_PX = 20;

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

/**
 * The rows that start a new page, so that no block is split that fits on one page. `starts` are the first rows of the blocks; a
 * block ends where the next begins, the last one before `endRow`. Rows above the first block go on the first page.
 */
export const pageBreaks = (
  starts: readonly number[],
  endRow: number,
  {
    columnWidths,
    rowHeights,
  }: { columnWidths: readonly number[]; rowHeights: Readonly<Record<number, number>> },
): number[] => {
  // Columns wider than the paper are scaled down, and so are the rows.
  const pagePx = PAPER_PX.height * Math.max(1, sum(columnWidths) / PAPER_PX.width);
  const heightOf = (from: number, to: number): number =>
    sum(Array.from({ length: to - from }, (_, index) => rowHeights[from + index] ?? ROW_PX));
  const breaks: number[] = [];
  let used = heightOf(0, starts[0] ?? 0);
  starts.forEach((start, index) => {
    const height = heightOf(start, starts[index + 1] ?? endRow);
    const isSplit = used > 0 && used + height > pagePx;
    if (isSplit) breaks.push(start);
    // A block of more than one page runs over the next pages.
    used = ((isSplit ? 0 : used) + height) % pagePx;
  });
  return breaks;
};
