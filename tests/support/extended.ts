import { readBlock } from "../../src/sheets/extend/block";
import { extendPlan } from "../../src/sheets/extend/extendPlan";
import { optionById, resultOptions } from "../../src/sheets/extend/resultOptions";
import { guessBlock, mappedColumns } from "../../src/sheets/extend/mappedColumns";
import type { Survey } from "../../src/workbook/survey";
import type { CellPatch } from "../../src/workbook/patch";

/** The patch that the pane would write if nobody corrected its guesses: these results, right beside the block. */
export const extended = (
  survey: Survey,
  ids: readonly string[],
  typed: Readonly<Record<string, string>> = {},
): CellPatch => {
  const block = readBlock(survey);
  const inputs = { columns: mappedColumns(block, guessBlock(block)), names: survey.names, typed };
  const options = resultOptions(inputs);
  const picks = ids.map((id) => {
    const option = optionById(options, id);
    return { option, heading: option.heading };
  });
  return extendPlan(block, picks, inputs, block.lastColumn + 1);
};
