import type { KeptState } from "./keptState";
import { heldWorkbooks, holdWorkbook, lastWorkbookOfTab } from "./tabWorkbook";

type Offer = (states: readonly KeptState[]) => Promise<KeptState | undefined>;

/**
 * The kept state that the page opens first. A tab that is loaded again goes on with its own workbook. Otherwise workbooks that no
 * file holds are offered, each by its newest state. undefined: the example.
 */
export const stateToOpen = async (
  newestFirst: readonly KeptState[],
  offer: Offer,
): Promise<KeptState | undefined> => {
  const own = newestFirst.find(({ workbook }) => workbook === lastWorkbookOfTab());
  if (own && (await holdWorkbook(own.workbook))) return own;
  const open = await heldWorkbooks();
  const newest = newestFirst.filter(
    ({ workbook }, index) => newestFirst.findIndex((each) => each.workbook === workbook) === index,
  );
  const offered = newest.filter(({ workbook, isInFile }) => !isInFile && !open.has(workbook));
  const chosen = offered.length > 0 ? await offer(offered) : undefined;
  // Meanwhile another tab may have opened it.
  return chosen && (await holdWorkbook(chosen.workbook)) ? chosen : undefined;
};
