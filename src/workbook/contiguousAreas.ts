import type { Area, CellAddress } from "./address";

/** The areas that cells fill: runs down a column, joined where neighbors have the same rows. */
export const contiguousAreas = (places: readonly CellAddress[]): Area[] => {
  const runs: Area[] = [];
  const downThenAcross = [...places].sort((a, b) => a.column - b.column || a.row - b.row);
  for (const place of downThenAcross) {
    const last = runs.at(-1);
    if (last?.to.column === place.column && last.to.row === place.row - 1)
      runs[runs.length - 1] = { ...last, to: place };
    else runs.push({ from: place, to: place });
  }
  const blocks: Area[] = [];
  for (const run of runs) {
    const beside = blocks.findIndex(
      ({ from, to }) =>
        from.row === run.from.row && to.row === run.to.row && to.column === run.from.column - 1,
    );
    const block = blocks[beside];
    if (block) blocks[beside] = { from: block.from, to: run.to };
    else blocks.push(run);
  }
  return blocks;
};
