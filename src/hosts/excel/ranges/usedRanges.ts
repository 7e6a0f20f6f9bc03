import { areaOf, PLACE_AND_SIZE } from "./ranges";
import type { Block } from "./readInPieces";

/** The used ranges of sheets whose names are loaded. A blank sheet has none. */
export const usedRanges = async (
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
): Promise<Block[]> => {
  const found = sheets.map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
  for (const { used } of found) used.load(PLACE_AND_SIZE);
  await context.sync();
  return found.flatMap(({ sheet, used }) =>
    used.isNullObject ? [] : [{ sheet, name: sheet.name, area: areaOf(used) }],
  );
};
