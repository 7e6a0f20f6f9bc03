import { useState } from "preact/hooks";
import type { Host } from "../../workbook/host";
import { freezeOrder } from "../../sheets/signedOrder/freezeOrder";
import { BuildCard } from "../parts/BuildCard";
import { today } from "../parts/today";
import { DateField, serialOf } from "./DateField";

/** Freezes an order, so that no later calculation moves what was signed. */
export const FreezeCard = ({ host }: { host: Host }) => {
  const [date, setDate] = useState(today);
  return (
    <BuildCard
      id="freeze"
      title="Signed base"
      summary="A dated, protected copy of the order in front, values only: quantities, prices and the inputs that made them. A seal shows if it is edited."
      action="Freeze the order"
      build={async () => freezeOrder(host, serialOf(date))}
    >
      <DateField name="freeze-date" date={date} onDate={setDate} />
    </BuildCard>
  );
};
