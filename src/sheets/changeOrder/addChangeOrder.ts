import { InputError } from "../../../shared/inputError";
import { itemKey } from "../../../shared/kinds/orderLines";
import type { Added, Host } from "../../workbook/host";
import type { Contents } from "../../workbook/contents";
import { chooseOrder, frozenSheet, liveOrdersIn, readLiveOrder, type LiveOrder } from "../signedBase/freeze";
import { nextNumbered } from "../../workbook/nextNumbered";
import { isSigned, readSigned } from "../signedBase/readSigned";
import { orderOnSigned } from "../signedBase/signedBase";
import type { ReadLine } from "../orderSheet/readOrder";
import type { SheetPlan } from "../../workbook/plan";
import { changeOrdersOf, refuseOffChain } from "./chain";
import { changeOrderSheet } from "./changeOrder";
import { datedBefore } from "./datedBefore";
import { livesOn, refuseOtherOrder, type Origin } from "./origin";
import { renamedItems } from "./renamed";
import { isWanted, itemsOf, type Renamed, type Side } from "./sides";
import { refuseTypedOver } from "./typedOver";
import { whyItMoved, type Why } from "./why";

/** What stands for now: a signed sheet, or the live order, frozen with this change or left to move. */
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

/** A draft takes no number from those that are agreed. */
const [CHANGE_ORDER, DRAFT] = ["Change order", "Draft change order"];

/** The signed sheets of a workbook, in its order. */
export const signedSheetsOf = ({ sheets }: Contents): string[] =>
  [...sheets].filter(([, sheet]) => isSigned(sheet)).map(([name]) => name);

interface Now {
  readonly side: Side;
  /** The order's own sheet. */
  readonly from: string;
  readonly job: string;
  /** The sheet that freezes it, where it is frozen with this change. */
  readonly frozen?: SheetPlan;
}

const signedSide = (contents: Contents, sheet: string): Now => {
  const { order, measures, sealed, from, job } = readSigned(contents, sheet);
  return { side: { order, measures, sealed }, from, job };
};

const liveSide = (
  contents: Contents,
  live: LiveOrder,
  choice: Exclude<NowChoice, { kind: "signed" }>,
  dateSerial: number,
): Now => {
  const { order, measures, job } = live;
  const from = order.sheet;
  if (choice.kind === "draft") return { side: { order, measures, sealed: undefined }, from, job };
  const { plan, sealed } = frozenSheet(contents, live, dateSerial);
  return { side: { order: orderOnSigned(plan.name, order), measures, sealed }, from, job, frozen: plan };
};

/** The sheet on which the order of two signed sheets lives still, perhaps under another name; undefined where none can be told. */
const orderBehind = (contents: Contents, from: readonly string[]): string | undefined => {
  const [only, ...others] = liveOrdersIn(contents);
  return from.find((name) => contents.sheets.has(name)) ?? (others.length === 0 ? only : undefined);
};

/** Why it moved, as far as the order that it was taken from is still in the workbook. */
const whysOf = (
  contents: Contents,
  liveOrder: string | undefined,
  base: Side,
  now: Side,
  renamed: Renamed,
): Why[] =>
  liveOrder === undefined
    ? [
        {
          item: "",
          sentences: ["the order isn't in the workbook any more, so that its inputs can't be followed"],
        },
      ]
    : whyItMoved(contents, readLiveOrder(contents, liveOrder), base, now, renamed);

/** What stands for now, and the sheet on which the order lives. */
const nowOf = (
  contents: Contents,
  base: Origin,
  { now, dateSerial }: ChangeOrderChoice,
  inFront: string,
): { now: Now; liveOrder: string | undefined } => {
  if (now.kind === "signed") {
    const signed = signedSide(contents, now.sheet);
    return { now: signed, liveOrder: orderBehind(contents, [base.from, signed.from]) };
  }
  const liveOrder = livesOn(contents, base) ?? chooseOrder(contents, inFront);
  return { now: liveSide(contents, readLiveOrder(contents, liveOrder), now, dateSerial), liveOrder };
};

/** What a line of an order says, in a text that another's can be compared with. */
const saidBy = ({ item, unit, needed, waste, toOrder, orderUnit, perPack, price }: ReadLine): string =>
  [itemKey(item), itemKey(unit), needed, waste, toOrder, itemKey(orderUnit), perPack, price].join("\n");

/** Whether two orders say the same of what they want, in whatever order their lines stand. */
const isUnchanged = (base: Side, now: Side): boolean => {
  const [then, after] = [base, now].map(({ order }) =>
    order.lines.filter(isWanted).map(saidBy).sort().join("\n\n"),
  );
  return then === after;
};

/** Adds a change order to a workbook, and where it was asked for the sheet that freezes what it goes by. */
export const addChangeOrder = async (host: Host, choice: ChangeOrderChoice): Promise<Added> => {
  const [contents, { sheet: inFront }] = await Promise.all([host.contents(), host.inView()]);
  if (choice.now.kind === "signed" && choice.now.sheet === choice.base)
    throw new InputError(`Base and now are both "${choice.base}": nothing can have changed.`);
  const base = readSigned(contents, choice.base);
  const baseSide: Side = base;
  const { now, liveOrder } = nowOf(contents, base, choice, inFront);
  const renamed = renamedItems(baseSide, now.side, now.from);
  if (itemsOf(baseSide, now.side, renamed).length === 0)
    throw new InputError(
      `Neither "${choice.base}" nor "${now.side.order.sheet}" orders anything. Nothing was written.`,
    );
  refuseOtherOrder(contents, base, { ...now, sheet: now.side.order.sheet });
  const earlier = changeOrdersOf(contents, base.from);
  refuseOffChain(earlier, choice.base);
  const sheet = changeOrderSheet({
    sheetName: nextNumbered(now.side.sealed ? CHANGE_ORDER : DRAFT, contents),
    job: now.job,
    dateSerial: choice.dateSerial,
    base: baseSide,
    now: now.side,
    renamed,
    earlier,
    whys: whysOf(contents, liveOrder, baseSide, now.side, renamed),
  });
  // What has lost a label or its total was refused above, by that: cells are found by labels.
  for (const each of earlier) refuseTypedOver(contents, each);
  const sheets = [sheet, ...(now.frozen ? [now.frozen] : [])];
  const undo = await host.write({ sheets, names: [] });
  return {
    sheets: sheets.map(({ name }) => name),
    remarks: [
      ...(isUnchanged(baseSide, now.side) ? [`Nothing has changed since "${choice.base}".`] : []),
      ...datedBefore(choice.dateSerial, earlier),
    ],
    undo,
  };
};
