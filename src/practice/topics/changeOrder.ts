import { changeOrderSpec } from "../../../functions/money/changeOrder";
import { salesTax, salesTaxSpec } from "../../../functions/money/salesTax";
import { exact, productToCent, sumOfCents } from "../../../shared/money";
import { call } from "../../workbook/formula";
import { distanceToWhole } from "../answers/count";
import { moneyAnswer } from "../answers/number";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import type { Topic } from "../topic";
import { quoted, step } from "../steps";

/** Four lines of an order: panel packs and ridge change, valley is deleted, hip is added. Unit prices; tax in percent. */
export type ChangeOrderFacts = {
  readonly packsBefore: number;
  readonly packsAfter: number;
  readonly packPrice: number;
  readonly ridgeBefore: number;
  readonly ridgeAfter: number;
  readonly ridgePrice: number;
  readonly valley: number;
  readonly valleyPrice: number;
  readonly hip: number;
  readonly hipPrice: number;
  readonly taxPercent: number;
};

const CENTS = 100;
/** Tax rounds at half a cent. */
const HALF = 0.5;

const extended = (quantity: number, price: number): number => productToCent(quantity, price);

const partsOf = (facts: ChangeOrderFacts) => ({
  packs: extended(facts.packsAfter - facts.packsBefore, facts.packPrice),
  ridge: extended(facts.ridgeAfter - facts.ridgeBefore, facts.ridgePrice),
  valley: -extended(facts.valley, facts.valleyPrice),
  hip: extended(facts.hip, facts.hipPrice),
});
const changeOf = (facts: ChangeOrderFacts): number => sumOfCents(Object.values(partsOf(facts)));
const orderAfter = (facts: ChangeOrderFacts): number =>
  sumOfCents([
    extended(facts.packsAfter, facts.packPrice),
    extended(facts.ridgeAfter, facts.ridgePrice),
    extended(facts.hip, facts.hipPrice),
  ]);
const rateOf = ({ taxPercent }: ChangeOrderFacts): number => exact(taxPercent).div(CENTS).toNumber();

const CHANGE: CommonMistakes<ChangeOrderFacts> = {
  "gave the new order, not the change": orderAfter,
  "left out the deleted item": (facts) => sumOfCents([changeOf(facts), -partsOf(facts).valley]),
  "left out the added item": (facts) => sumOfCents([changeOf(facts), -partsOf(facts).hip]),
  "reversed the sign of the change": (facts) => -changeOf(facts),
};

const TAX: CommonMistakes<ChangeOrderFacts> = {
  "taxed the new order, not the change": (facts) => salesTax(orderAfter(facts), rateOf(facts)),
  "left out the deleted item": (facts) =>
    salesTax(sumOfCents([changeOf(facts), -partsOf(facts).valley]), rateOf(facts)),
  "left out the added item": (facts) =>
    salesTax(sumOfCents([changeOf(facts), -partsOf(facts).hip]), rateOf(facts)),
  "gave the change with tax": (facts) =>
    sumOfCents([changeOf(facts), salesTax(changeOf(facts), rateOf(facts))]),
};

export const changeOrderTopic = {
  id: "change order",
  title: "Change order",
  reteachTip:
    "Write before and after side by side, match them by item, and give every line its sign before adding.",
  draw: (random, { level }) => {
    const cents = level === "first hour" ? CENTS : 5;
    const price = (least: number, most: number): number =>
      (random.whole((least * CENTS) / cents, (most * CENTS) / cents) * cents) / CENTS;
    const packsBefore = random.whole(60, 140);
    const ridgeBefore = random.whole(4, 9);
    return {
      packsBefore,
      packsAfter: packsBefore + random.whole(3, 20),
      packPrice: price(20, 90),
      ridgeBefore,
      ridgeAfter: ridgeBefore - random.whole(1, 3),
      ridgePrice: price(12, 30),
      valley: random.whole(2, 6),
      valleyPrice: price(18, 40),
      hip: random.whole(2, 8),
      hipPrice: price(12, 30),
      taxPercent: random.pick([5, 6, 7, 6.25, 7.25]),
    };
  },
  ask: (facts, { level }) => {
    const money = (price: number): string => price.toFixed(2);
    const line = (before: number, after: number, price: number): string =>
      `before ${before}, after ${after}, at ${money(price)}`;
    return {
      text:
        "A signed order has changed. Find the amount of the change before tax; a credit is negative." +
        (level === "first hour" ? "" : " Also find the sales tax on the change, to the cent."),
      givens: [
        { label: "Packs of panels", text: line(facts.packsBefore, facts.packsAfter, facts.packPrice) },
        { label: "Ridge", text: line(facts.ridgeBefore, facts.ridgeAfter, facts.ridgePrice) },
        { label: "Valley", text: line(facts.valley, 0, facts.valleyPrice) },
        { label: "Hip", text: line(0, facts.hip, facts.hipPrice) },
        ...(level === "first hour" ? [] : [{ label: "Sales tax", text: `${facts.taxPercent} %` }]),
      ],
    };
  },
  solve: (facts, { level }) => {
    const parts = partsOf(facts);
    const change = changeOf(facts);
    const rate = rateOf(facts);
    const tax = salesTax(change, rate);
    const money = (amount: number): string => amount.toFixed(2).replace("-", "−");
    const row = (item: string, quantity: number, price: number): string =>
      `${quoted(item)},${quantity},${price}`;
    const before = [
      row("packs", facts.packsBefore, facts.packPrice),
      row("ridge", facts.ridgeBefore, facts.ridgePrice),
      row("valley", facts.valley, facts.valleyPrice),
    ];
    const after = [
      row("packs", facts.packsAfter, facts.packPrice),
      row("ridge", facts.ridgeAfter, facts.ridgePrice),
      row("hip", facts.hip, facts.hipPrice),
    ];
    const table = call(changeOrderSpec, `{${before.join(";")}}`, `{${after.join(";")}}`, "FALSE");
    const taxAnswer = moneyAnswer("Sales tax on the change", tax, mistakesOf(TAX, facts));
    return {
      answers: [
        moneyAnswer("Change before tax", change, mistakesOf(CHANGE, facts)),
        ...(level === "first hour"
          ? []
          : [{ ...taxAnswer, roundingMargin: distanceToWhole(change * rate * CENTS + HALF) }]),
      ],
      steps: [
        step(
          `${facts.packsAfter - facts.packsBefore} packs: ${money(parts.packs)}; ${facts.ridgeBefore - facts.ridgeAfter} fewer ridge: ${money(parts.ridge)}; valley deleted: ${money(parts.valley)}; hip added: ${money(parts.hip)}. Total: ${money(change)}.`,
          // The last row of the table is the total; its last column is the amount.
          `INDEX(${table},5,8)`,
          change,
        ),
        ...(level === "first hour"
          ? []
          : [
              step(
                `${money(change)} × ${facts.taxPercent} % = ${money(tax)}, to the cent.`,
                call(salesTaxSpec, String(change), quoted(`${facts.taxPercent}%`)),
                tax,
              ),
            ]),
      ],
    };
  },
} as const satisfies Topic<ChangeOrderFacts>;
