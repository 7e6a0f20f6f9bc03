import { isBlank } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import type { Added, Host } from "../../workbook/host";
import { agreedChangeOrder } from "../changeOrder/existingChangeOrders";
import { issueSeal, sealedFigures } from "../changeOrder/seals";
import { refuseOverwrittenFormulas } from "../changeOrder/overwrittenFormulas";
import type { Contents } from "../../workbook/contents";
import { nextSheetName } from "../../workbook/nextSheetName";
import { referencesOf } from "../trace/references";
import {
  ACCOUNTS,
  ENTRY_HEADINGS,
  journalEntrySheet,
  notIssuedWarning,
  type Accounts,
  type AccountUse,
} from "./journalEntrySheet";

const LEDGER_SHEET = "Ledger";

const refuseMissing = (accounts: Accounts): void => {
  const missing = (Object.keys(ACCOUNTS) as AccountUse[]).find((use) => isBlank(accounts[use]));
  if (missing !== undefined)
    throw new InputError(`The account for "${ACCOUNTS[missing]}" is missing. Nothing was written.`);
};

/** The sheet on which a change order is already posted. */
const postedOn = (contents: Contents, changeOrder: string): string | undefined =>
  [...contents.sheets].find(
    ([name, { cells }]) =>
      cells.some((line) => ENTRY_HEADINGS.every((heading, column) => line[column] === heading)) &&
      cells.some((line, row) =>
        line.some((_, column) =>
          referencesOf(contents, name, { row, column }).some(({ sheet }) => sheet === changeOrder),
        ),
      ),
  )?.[0];

/** Adds a change order's entry of the journal to a workbook. */
export const addJournalEntry = async (
  host: Host,
  changeOrder: string,
  accounts: Accounts,
): Promise<Added> => {
  refuseMissing(accounts);
  const contents = await host.contents();
  const change = agreedChangeOrder(contents, changeOrder, "post");
  const sealed = sealedFigures(change);
  refuseOverwrittenFormulas(contents, change);
  const posted = postedOn(contents, changeOrder);
  if (posted !== undefined)
    throw new InputError(
      `"${changeOrder}" is already on "${posted}": delete that sheet to write it again. Nothing was written.`,
    );
  const name = nextSheetName(LEDGER_SHEET, contents);
  const sheet = journalEntrySheet(name, change, accounts, sealed);
  const undo = await host.addSheets({ sheets: [sheet], names: [] });
  const remarks = issueSeal(change) === undefined ? [notIssuedWarning(changeOrder)] : [];
  return { sheets: [sheet.name], remarks, undo };
};
