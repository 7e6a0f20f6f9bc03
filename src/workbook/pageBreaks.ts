import { PAPER_PX } from "./pageSetup";

/** Of a row that nobody made higher. */
const ROW_PX = 20;

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

/**
 * The rows, among those at which a block begins, before which a page has to end: so that none is torn that fits on a page. A
 * block ends where the next begins, the last one before `endRow`; what stands above the first goes on the first page.
 */
export const pageBreaks = (
  starts: readonly number[],
  endRow: number,
  {
    columnWidths,
    rowHeights,
  }: { columnWidths: readonly number[]; rowHeights: Readonly<Record<number, number>> },
): number[] => {
  // Columns that are wider than the paper are printed smaller, and so are the rows then.
  const pagePx = PAPER_PX.height * Math.max(1, sum(columnWidths) / PAPER_PX.width);
  const heightOf = (from: number, to: number): number =>
    sum(Array.from({ length: to - from }, (_, index) => rowHeights[from + index] ?? ROW_PX));
  const breaks: number[] = [];
  let used = heightOf(0, starts[0] ?? 0);
  starts.forEach((start, index) => {
    const height = heightOf(start, starts[index + 1] ?? endRow);
    const isTorn = used > 0 && used + height > pagePx;
    if (isTorn) breaks.push(start);
    // A block of more than a page goes on over the next ones.
    used = ((isTorn ? 0 : used) + height) % pagePx;
  });
  return breaks;
};
