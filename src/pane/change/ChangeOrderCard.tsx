import { useState } from "preact/hooks";
import { InputError } from "../../../shared/inputError";
import type { Added, Host } from "../../workbook/host";
import { addChangeOrder, type NowChoice } from "../../sheets/changeOrder/addChangeOrder";
import { BuildCard } from "../parts/BuildCard";
import { ChoiceField, choicesOf } from "../controls/ChoiceField";
import { today } from "../parts/today";
import { DateField, serialOf } from "./DateField";
import type { SheetLists } from "./useSheetLists";

/** No sheet can have these names: a slash isn't allowed.*/
const [FROZEN, DRAFT] = ["/frozen", "/draft"];

const NONE_YET = [{ value: "", label: "none yet: freeze an order" }];
const UNSIGNED = [
  { value: FROZEN, label: "the order, frozen now" },
  { value: DRAFT, label: "the order, as a draft" },
];

const nowOf = (chosen: string): NowChoice => {
  if (chosen === FROZEN) return { kind: "frozen" };
  return chosen === DRAFT ? { kind: "draft" } : { kind: "signed", sheet: chosen };
};

interface Props {
  readonly host: Host;
  readonly lists: SheetLists;
}

/** Compares a signed order with the order as it is now, or with another signed order. */
export const ChangeOrderCard = ({ host, lists: { signed } }: Props) => {
  const [chosenBase, setBase] = useState("");
  const [chosenNow, setNow] = useState(FROZEN);
  const [date, setDate] = useState(today);
  // By default, changes are counted from the last signed order.
  const base = signed.includes(chosenBase) ? chosenBase : (signed.at(-1) ?? "");
  const now = chosenNow === DRAFT || signed.includes(chosenNow) ? chosenNow : FROZEN;

  const build = async (): Promise<Added> => {
    if (base === "")
      throw new InputError("Freeze an order first: a change order goes on from a signed base.");
    return addChangeOrder(host, { base, now: nowOf(now), dateSerial: serialOf(date) });
  };

  return (
    <BuildCard
      id="change-order"
      title="Change order"
      summary="What was added, removed or changed since a signed base, by how much, at what price, why, and what the contract is now. Rates, labor, reasons and initials are typed on the sheet."
      action="Make change order"
      build={build}
    >
      <ChoiceField
        label="Base"
        name="change-base"
        value={base}
        choices={signed.length === 0 ? NONE_YET : choicesOf(signed)}
        onValue={setBase}
      />
      <ChoiceField
        label="Now"
        name="change-now"
        value={now}
        choices={[...UNSIGNED, ...choicesOf(signed)]}
        onValue={setNow}
      />
      <DateField name="change-date" date={date} onDate={setDate} />
    </BuildCard>
  );
};
