import type { PlannedCell } from "./plan";
import { ROW_HEIGHTS } from "./styles";

/** The height of each row whose cells need more than the usual. */
export const rowHeightsOf = (cells: readonly PlannedCell[]): Record<number, number> =>
  Object.fromEntries(
    cells.flatMap(({ row, style }) => {
      const height = style && ROW_HEIGHTS[style];
      return height === undefined ? [] : [[row, height] as const];
    }),
  );
