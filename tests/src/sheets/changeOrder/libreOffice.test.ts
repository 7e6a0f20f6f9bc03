import { openXlsx, saveXlsx } from "../../../../src/xlsx/xlsxFile";
import type { Book } from "../../../../src/xlsx/book/book";
import { CellError, type Cell } from "../../../../shared/cell";
import { addChangeOrder } from "../../../../src/sheets/changeOrder/addChangeOrder";
import { addJournalEntry } from "../../../../src/sheets/journalEntry/addJournalEntry";
import { freezeOrder } from "../../../../src/sheets/signedOrder/freezeOrder";
import { addressBeside, typeBeside } from "../../../support/bid";
import { describeWithLibreOffice } from "../../../support/libreOffice";
import { PlanWorkbook } from "../../../support/planWorkbook";
import { recalculated } from "../../../support/recalculated";
import { smallOrder } from "../../../support/smallOrder";

jest.setTimeout(180_000);

const DAY = 46_174;
const SHEETS = ["Signed 1", "Signed 2", "Change order 1", "Draft change order 1", "Ledger 1"];

/** Half cents on every side: a program that rounds another way comes to another total. */
const changed = async (): Promise<PlanWorkbook> => {
  const bid = new PlanWorkbook(
    smallOrder([
      ["panels", 80, 73.5],
      ["ridge *", 5, 19.815],
      ["valley", 3, 24.7],
    ]),
  );
  await freezeOrder(bid.host, DAY);
  bid.type("Order", "G3", 81);
  bid.type("Order", "G4", 6);
  bid.type("Order", "G5", 2);
  await addChangeOrder(bid.host, { base: "Signed 1", now: { kind: "frozen" }, dateSerial: DAY });
  await typeBeside(bid, "Change order 1", 3, {
    "Overhead on cost": 0.1,
    "Profit on cost and overhead": 0.05,
    "Both, on deductions": "given back",
    "Sales tax, state and local": 0.05,
    Retainage: 0.1,
    "Days added by this change": 2,
    "Contract sum as signed": 9000,
  });
  bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 13), 1.005);
  bid.type("Order", "G5", 0);
  bid.type("Order", "K3", 75.125);
  await addChangeOrder(bid.host, { base: "Signed 2", now: { kind: "draft" }, dateSerial: DAY });
  await typeBeside(bid, "Draft change order 1", 3, { "Tax is rounded": "on the total" });
  await addJournalEntry(bid.host, "Change order 1", {
    receivable: "1",
    retainage: "2",
    revenue: "3",
    tax: "4",
  });
  return bid;
};

/** Zero has no sign on paper. */
const plain = (value: Cell): Cell | string => {
  if (value instanceof CellError) return value.code;
  return value === 0 ? 0 : value;
};

const valuesOf = ({ sheets }: Book): Record<string, Cell | string> =>
  Object.fromEntries(
    sheets
      .filter(({ name }) => SHEETS.includes(name))
      .flatMap(({ name, cells }) =>
        [...cells].flatMap(([row, inRow]) =>
          [...inRow].flatMap(([column, { value }]) =>
            value === null || value === "" ? [] : [[`${name} ${row},${column}`, plain(value)]],
          ),
        ),
      ),
  );

describeWithLibreOffice("change orders in a file that LibreOffice works out", () => {
  it("come to the same cents, cell by cell, and the signed sheets are as signed", async () => {
    const bid = await changed();
    const saved = saveXlsx(undefined, (await bid.calculated()).book());
    const ours = valuesOf(openXlsx(saved).book);
    const theirs = valuesOf(await recalculated(saved));
    expect(Object.keys(ours).length).toBeGreaterThan(200);
    expect(theirs).toEqual(ours);
    expect(Object.values(theirs).filter((value) => value === "as signed")).toHaveLength(2);
  });
});
