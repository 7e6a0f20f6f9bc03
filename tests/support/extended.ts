import { readBlock } from "../../src/sheets/extend/block";
import { extendPlan } from "../../src/sheets/extend/extendPlan";
import { offerById, offersFor } from "../../src/sheets/extend/offers";
import { guessBlock, meantColumns } from "../../src/sheets/extend/proposal";
import type { Survey } from "../../src/workbook/survey";
import type { CellPatch } from "../../src/workbook/patch";

/** The patch that the pane would write if nobody corrected its guesses: these results, right beside the block. */
export const extended = (
  survey: Survey,
  ids: readonly string[],
  typed: Readonly<Record<string, string>> = {},
): CellPatch => {
  const block = readBlock(survey);
  const supplies = { columns: meantColumns(block, guessBlock(block)), names: survey.names, typed };
  const offers = offersFor(supplies);
  const picks = ids.map((id) => {
    const offer = offerById(offers, id);
    return { offer, heading: offer.heading };
  });
  return extendPlan(block, picks, supplies, block.lastColumn + 1);
};
