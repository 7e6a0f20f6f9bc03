import type { PlannedCell } from "./plan";
import { ROW_HEIGHTS } from "./styles";

/** The heights of the rows that need more than the default. */
export const rowHeightsOf = (cells: readonly PlannedCell[]): Record<number, number> =>
  Object.fromEntries(
    cells.flatMap(({ row, style }) => {
      const height = style && ROW_HEIGHTS[style];
      return height === undefined ? [] : [[row, height] as const];
    }),
  );
