import { readArea } from "../../src/workbook/address";
import { changeOrderSheet } from "../../src/sheets/changeOrder/changeOrderSheet";
import type { ComparedOrder } from "../../src/sheets/changeOrder/comparedOrders";
import type { Contents } from "../../src/workbook/contents";
import { fieldSheetPlan } from "../../src/sheets/fieldSheet/fieldSheet";
import { panelSheet } from "../../src/sheets/panelSheet";
import { journalEntrySheet } from "../../src/sheets/journalEntry/journalEntrySheet";
import { number, text, type SheetPlan, type WorkbookPlan } from "../../src/workbook/plan";
import { frozenSheet, readLiveOrder } from "../../src/sheets/signedOrder/freezeOrder";
import { orderOnSigned } from "../../src/sheets/signedOrder/signedOrderSheet";
import { DEMO_TAKEOFF, FOOTPRINT_DEMO } from "../../src/sheets/newJob/demoTakeoffs";
import { takeoffPlan, USUAL_NAMES } from "../../src/sheets/newJob/takeoffPlan";
import { smallOrder, type Line } from "./smallOrder";

const PANEL = panelSheet("Panel", {
  exposedWidthIn: 24,
  exposedHeightIn: 12,
  gableSetbackIn: 1.5,
  gableFoldIn: 2.5,
});

/** What stands in a workbook of typed cells. */
const contentsOf = ({ sheets }: WorkbookPlan): Contents => ({
  sheets: new Map(
    sheets.map(({ name, cells: planned }) => {
      const cells: (string | number | null)[][] = [];
      for (const { row, column, content } of planned) {
        const line = (cells[row] ??= []);
        line[column] =
          content?.kind === "number" ? content.number : content?.kind === "text" ? content.text : null;
      }
      return [
        name,
        { cells: Array.from(cells, (line) => Array.from(line ?? [], (cell) => cell ?? null)), formulas: [] },
      ];
    }),
  ),
  targets: new Map(),
});

const SIGNED_ON = 46_174;

/** Two orders, each frozen, what changed between them, and the entry of the journal. */
const changedOrder = (): WorkbookPlan => {
  const sides: ComparedOrder[] = [];
  const frozen: SheetPlan[] = [];
  for (const lines of [
    [
      ["panels", 80, 73.5],
      ["-ridge", 5, 19.8],
    ],
    [
      ["panels", 97, 73.5],
      ["hip *", 2, 18.6],
    ],
  ] satisfies Line[][]) {
    const { sheets, targets } = contentsOf(smallOrder(lines));
    const contents = {
      targets,
      sheets: new Map([...sheets, ...contentsOf({ sheets: frozen, names: [] }).sheets]),
    };
    const live = readLiveOrder(contents, "Order");
    const { plan, sealed } = frozenSheet(contents, live, SIGNED_ON);
    frozen.push(plan);
    sides.push({ order: orderOnSigned(plan.name, live.order), measurements: live.measurements, sealed });
  }
  const [base, now] = sides as [ComparedOrder, ComparedOrder];
  const change = changeOrderSheet({
    sheetName: "Change order 1",
    job: "=shed",
    dateSerial: SIGNED_ON,
    base,
    now,
    renamed: new Map(),
    previous: [],
    causes: [{ item: "panels", sentences: ["+1 plane", "a longer slope"] }],
  });
  const ledger = journalEntrySheet(
    "Ledger 1",
    {
      sheet: change.name,
      contents: contentsOf({ sheets: [change], names: [] }).sheets.get(change.name) ?? {
        cells: [],
        formulas: [],
      },
      base: base.order.sheet,
      now: now.order.sheet,
      isDraft: false,
    },
    { receivable: "1200", retainage: "=1250", revenue: "4000", tax: "2200" },
    { sheet: change.name, area: readArea("A5:Q30"), seal: 1 },
  );
  return { sheets: [change, ...frozen, ledger], names: [] };
};

/** Every template, filled in the ways that differ. */
export const TEMPLATES: Readonly<Record<string, WorkbookPlan>> = {
  "the takeoff": takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES),
  "the takeoff from a footprint": takeoffPlan(FOOTPRINT_DEMO, USUAL_NAMES),
  "an empty takeoff for a job that reads like a formula": takeoffPlan(
    { ...DEMO_TAKEOFF, job: "=1+1", planes: [], runs: [] },
    USUAL_NAMES,
  ),
  "signed orders, their change order and its ledger lines": changedOrder(),
  "the field sheet": {
    sheets: [
      fieldSheetPlan({
        sheetName: "Field North",
        inputs: {
          plane: text("North"),
          shape: text("rectangle"),
          eave: number(30),
          slopeLength: text("20 ft"),
        },
        courses: 20,
      }),
      PANEL.sheet,
    ],
    names: PANEL.names,
  },
};
