import { InputError } from "../../../shared/inputError";
import { itemKey } from "../../../shared/kinds/orderLines";
import type { Added, Host } from "../../workbook/host";
import type { Contents } from "../../workbook/contents";
import {
  chooseOrder,
  frozenSheet,
  liveOrdersIn,
  readLiveOrder,
  type LiveOrder,
} from "../signedOrder/freezeOrder";
import { nextSheetName } from "../../workbook/nextSheetName";
import { isSigned, readSignedOrder } from "../signedOrder/readSignedOrder";
import { orderOnSigned } from "../signedOrder/signedOrderSheet";
import type { ReadLine } from "../orderSheet/readOrder";
import type { SheetPlan } from "../../workbook/plan";
import { changeOrdersOfOrder, refuseOutOfSequence } from "./changeOrderSequence";
import { changeOrderSheet } from "./changeOrderSheet";
import { dateWarnings } from "./dateWarnings";
import { liveSheetOf, refuseDifferentOrders, type OrderSource } from "./sourceOrder";
import { renamedItems } from "./renamedItems";
import { isNeededOrOrdered, itemsOf, type RenamedItems, type ComparedOrder } from "./comparedOrders";
import { refuseOverwrittenFormulas } from "./overwrittenFormulas";
import { causesOfChanges, type ItemCauses } from "./causes";

/** The order to compare with the base: a signed order, or the live order, frozen with this change or left live. */
export type NowChoice =
  | { readonly kind: "signed"; readonly sheet: string }
  | { readonly kind: "frozen" }
  | { readonly kind: "draft" };

export interface ChangeOrderChoice {
  /** A signed sheet. */
  readonly base: string;
  readonly now: NowChoice;
  /** As spreadsheets count days. */
  readonly dateSerial: number;
}

/** Drafts are numbered separately. */
const [CHANGE_ORDER, DRAFT] = ["Change order", "Draft change order"];

/** The signed sheets of a workbook, in its order. */
export const signedSheetsOf = ({ sheets }: Contents): string[] =>
  [...sheets].filter(([, sheet]) => isSigned(sheet)).map(([name]) => name);

interface Now {
  readonly side: ComparedOrder;
  /** The order's own sheet. */
  readonly from: string;
  readonly job: string;
  /** The sheet that freezes it, where it is frozen with this change. */
  readonly frozen?: SheetPlan;
}

const signedSide = (contents: Contents, sheet: string): Now => {
  const { order, measurements, sealed, from, job } = readSignedOrder(contents, sheet);
  return { side: { order, measurements, sealed }, from, job };
};

const liveSide = (
  contents: Contents,
  live: LiveOrder,
  choice: Exclude<NowChoice, { kind: "signed" }>,
  dateSerial: number,
): Now => {
  const { order, measurements, job } = live;
  const from = order.sheet;
  if (choice.kind === "draft") return { side: { order, measurements, sealed: undefined }, from, job };
  const { plan, sealed } = frozenSheet(contents, live, dateSerial);
  return { side: { order: orderOnSigned(plan.name, order), measurements, sealed }, from, job, frozen: plan };
};

/** The sheet on which the order of two signed sheets lives still, perhaps under another name; undefined where none can be told. */
const orderBehind = (contents: Contents, from: readonly string[]): string | undefined => {
  const [only, ...others] = liveOrdersIn(contents);
  return from.find((name) => contents.sheets.has(name)) ?? (others.length === 0 ? only : undefined);
};

/** The causes of the changes, as far as the order that was signed is still in the workbook. */
const causesOf = (
  contents: Contents,
  liveOrder: string | undefined,
  base: ComparedOrder,
  now: ComparedOrder,
  renamed: RenamedItems,
): ItemCauses[] =>
  liveOrder === undefined
    ? [
        {
          item: "",
          sentences: ["the order isn't in the workbook any more, so that its inputs can't be followed"],
        },
      ]
    : causesOfChanges(contents, readLiveOrder(contents, liveOrder), base, now, renamed);

/** The order to compare with the base, and the sheet of the live order. */
const nowOf = (
  contents: Contents,
  base: OrderSource,
  { now, dateSerial }: ChangeOrderChoice,
  activeSheetName: string,
): { now: Now; liveOrder: string | undefined } => {
  if (now.kind === "signed") {
    const signed = signedSide(contents, now.sheet);
    return { now: signed, liveOrder: orderBehind(contents, [base.from, signed.from]) };
  }
  const liveOrder = liveSheetOf(contents, base) ?? chooseOrder(contents, activeSheetName);
  return { now: liveSide(contents, readLiveOrder(contents, liveOrder), now, dateSerial), liveOrder };
};

/** A line of an order as one text, to compare with another line. */
const lineText = ({ item, unit, needed, waste, toOrder, orderUnit, perPack, price }: ReadLine): string =>
  [itemKey(item), itemKey(unit), needed, waste, toOrder, itemKey(orderUnit), perPack, price].join("\n");

/** Whether two orders have the same lines, in any sequence. */
const isUnchanged = (base: ComparedOrder, now: ComparedOrder): boolean => {
  const [then, after] = [base, now].map(({ order }) =>
    order.lines.filter(isNeededOrOrdered).map(lineText).sort().join("\n\n"),
  );
  return then === after;
};

/** Adds a change order to a workbook and, if chosen, the sheet that freezes the live order. */
export const addChangeOrder = async (host: Host, choice: ChangeOrderChoice): Promise<Added> => {
  const [contents, { sheet: activeSheetName }] = await Promise.all([host.contents(), host.activeSheet()]);
  if (choice.now.kind === "signed" && choice.now.sheet === choice.base)
    throw new InputError(`Base and now are both "${choice.base}": nothing can have changed.`);
  const base = readSignedOrder(contents, choice.base);
  const baseSide: ComparedOrder = base;
  const { now, liveOrder } = nowOf(contents, base, choice, activeSheetName);
  const renamed = renamedItems(baseSide, now.side, now.from);
  if (itemsOf(baseSide, now.side, renamed).length === 0)
    throw new InputError(
      `Neither "${choice.base}" nor "${now.side.order.sheet}" orders anything. Nothing was written.`,
    );
  refuseDifferentOrders(contents, base, { ...now, sheet: now.side.order.sheet });
  const previous = changeOrdersOfOrder(contents, base.from);
  refuseOutOfSequence(previous, choice.base);
  const sheet = changeOrderSheet({
    sheetName: nextSheetName(now.side.sealed ? CHANGE_ORDER : DRAFT, contents),
    job: now.job,
    dateSerial: choice.dateSerial,
    base: baseSide,
    now: now.side,
    renamed,
    previous,
    causes: causesOf(contents, liveOrder, baseSide, now.side, renamed),
  });
  // What has lost a label or its total was refused above, by that: cells are found by labels.
  for (const each of previous) refuseOverwrittenFormulas(contents, each);
  const sheets = [sheet, ...(now.frozen ? [now.frozen] : [])];
  const undo = await host.addSheets({ sheets, names: [] });
  return {
    sheets: sheets.map(({ name }) => name),
    remarks: [
      ...(isUnchanged(baseSide, now.side) ? [`Nothing has changed since "${choice.base}".`] : []),
      ...dateWarnings(choice.dateSerial, previous),
    ],
    undo,
  };
};
