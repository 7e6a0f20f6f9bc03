import { Button } from "@fluentui/react-button";
import { useEffect, useState } from "preact/hooks";
import { InputError } from "../../../shared/inputError";
import type { Added } from "../../workbook/host";
import { addJournalEntry } from "../../sheets/journalEntry/addJournalEntry";
import { ACCOUNTS, type AccountUse } from "../../sheets/journalEntry/journalEntrySheet";
import { journalEntryWarnings, journalEntryTable } from "../../sheets/journalEntry/journalEntryTable";
import { BuildCard } from "../parts/BuildCard";
import { ChoiceField, choicesOf } from "../controls/ChoiceField";
import { TextField } from "../controls/TextField";
import { OutcomeLine } from "../parts/OutcomeLine";
import type { PaneHost } from "../parts/paneHost";
import { useWorkbookState } from "../parts/useWorkbookState";
import { warningOf, useOutcome } from "../parts/useOutcome";
import type { SheetLists } from "./useSheetLists";

const USES = Object.keys(ACCOUNTS) as AccountUse[];
const NO_ACCOUNTS: Readonly<Record<AccountUse, string>> = {
  receivable: "",
  retainage: "",
  revenue: "",
  tax: "",
};

const NONE_YET = [{ value: "", label: "none yet: make one first" }];

interface Props {
  readonly host: PaneHost;
  readonly lists: SheetLists;
}

/** A change order as a journal entry, on a sheet and as a file. */
export const LedgerCard = ({ host, lists: { changeOrders, activeSheetName } }: Props) => {
  const [chosen, setChosen] = useState("");
  const [accounts, setAccounts] = useState(NO_ACCOUNTS);
  const [written, setWritten] = useWorkbookState<string>();
  const saving = useOutcome();
  // The active change order is preselected; the list still offers the others.
  useEffect(() => {
    if (changeOrders.includes(activeSheetName)) setChosen(activeSheetName);
  }, [changeOrders, activeSheetName]);
  const changeOrder = changeOrders.includes(chosen) ? chosen : (changeOrders.at(-1) ?? "");

  const build = async (): Promise<Added> => {
    if (changeOrder === "") throw new InputError("Make a change order first: its total is what is posted.");
    saving.forget();
    const added = await addJournalEntry(host, changeOrder, accounts);
    setWritten(added.sheets[0]);
    return added;
  };

  const save = (sheet: string): Promise<void> =>
    saving.attempt(async () => {
      const contents = await host.contents();
      const table = journalEntryTable(contents, sheet);
      const message = ((await host.files?.saveTable(sheet, table)) ?? []).join(" ");
      return { message, ...warningOf(journalEntryWarnings(contents, sheet)) };
    });

  return (
    <BuildCard
      id="ledger"
      title="Ledger lines"
      summary="A change order as a journal entry, debit equal to credit, with the accounts that you name."
      action="Write ledger lines"
      build={build}
      after={
        host.files &&
        written !== undefined && (
          <>
            <Button onClick={() => void save(written)}>{`Save "${written}" as .csv`}</Button>
            <OutcomeLine outcome={saving.outcome} />
          </>
        )
      }
    >
      <ChoiceField
        label="Change order"
        name="ledger-change-order"
        value={changeOrder}
        choices={changeOrders.length === 0 ? NONE_YET : choicesOf(changeOrders)}
        onValue={setChosen}
      />
      <fieldset>
        <legend>Accounts</legend>
        {USES.map((use) => (
          <TextField
            key={use}
            label={ACCOUNTS[use]}
            name={`account-${use}`}
            value={accounts[use]}
            onValue={(value) => {
              setAccounts((others) => ({ ...others, [use]: value }));
            }}
          />
        ))}
      </fieldset>
    </BuildCard>
  );
};
