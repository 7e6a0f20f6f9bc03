import { isBlank, type Cell, type Matrix } from "../cell";

/** Blocks of rows between blank rows. */
export const blocksOf = (cells: Matrix): Matrix[] => {
  const blocks: (readonly Cell[])[][] = [[]];
  for (const row of cells) {
    if (row.every(isBlank)) blocks.push([]);
    else blocks.at(-1)?.push(row);
  }
  return blocks.filter((block) => block.length > 0);
};
