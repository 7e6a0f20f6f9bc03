import type { Cell } from "../../shared/cell";
import { itemKey, orderLines, type OrderLine } from "../../shared/kinds/orderLines";
import { exact, productToCent, sumOfCents } from "../../shared/money";
import { countOf, MONEY_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable, required } from "../../shared/spec/spec";

/** The amount of a line, to the cent. */
const extended = (line: OrderLine | undefined): number =>
  line ? productToCent(line.quantity, line.price) : 0;

const inWords = (before: OrderLine | undefined, after: OrderLine | undefined): string => {
  if (!before) return "added";
  if (!after) return "removed";
  return before.quantity === after.quantity && before.price === after.price ? "unchanged" : "changed";
};

const byItem = (lines: readonly OrderLine[]): ReadonlyMap<string, OrderLine> =>
  new Map(lines.map((line) => [itemKey(line.item), line]));

/**
 * Every item of both orders, those of the first in its order and then the added ones, with the change in quantity and
 * amount. The total is the sum of the amounts shown.
 */
export const changeOrder = (before: readonly OrderLine[], after: readonly OrderLine[]): Cell[][] => {
  const [then, now] = [byItem(before), byItem(after)];
  const added = after.filter(({ item }) => !then.has(itemKey(item)));
  const amounts: number[] = [];
  const rows = [...before, ...added].map(({ item }): Cell[] => {
    const [old, current] = [then.get(itemKey(item)), now.get(itemKey(item))];
    const [from, to] = [old?.quantity ?? 0, current?.quantity ?? 0];
    const amount = sumOfCents([extended(current), -extended(old)]);
    amounts.push(amount);
    return [
      item,
      inWords(old, current),
      from,
      to,
      exact(to).minus(exact(from)).toNumber(),
      old?.price ?? "",
      current?.price ?? "",
      amount,
    ];
  });
  return [...rows, ["total", "", "", "", "", "", "", sumOfCents(amounts)]];
};

export const changeOrderSpec = defineTable({
  id: "CHANGEORDER",
  concept: "money",
  summary: "What changed between two orders, item by item: by how much, and what it costs.",
  parameters: [
    required("before", orderLines, "The order as agreed."),
    required("after", orderLines, "The order as it is now. Items are matched by name, not by row."),
  ],
  columns: [
    { heading: "item", result: TEXT_RESULT },
    { heading: "what happened", result: TEXT_RESULT },
    { heading: "before", result: countOf("") },
    { heading: "after", result: countOf("") },
    { heading: "change", result: countOf("") },
    { heading: "price before", result: MONEY_RESULT },
    { heading: "price now", result: MONEY_RESULT },
    { heading: "amount", result: MONEY_RESULT },
  ],
  formula:
    "amount = quantity × price after − quantity × price before, each rounded to the cent, half cents away from zero; " +
    "the total is the sum of the amounts",
  source: "arithmetic, in exact decimals",
  examples: [
    {
      args: [
        [
          ["item", "quantity", "price"],
          ["panels", 94, 73.5],
          ["ridge", 7, 19.8],
          ["valley", 2, 31],
        ],
        [
          ["panels", 102, 73.5],
          ["hip", 6, 18],
          ["Ridge", 7, 19.8],
        ],
      ],
      result: [
        ["item", "what happened", "before", "after", "change", "price before", "price now", "amount"],
        ["panels", "changed", 94, 102, 8, 73.5, 73.5, 588],
        ["ridge", "unchanged", 7, 7, 0, 19.8, 19.8, 0],
        ["valley", "removed", 2, 0, -2, 31, "", -62],
        ["hip", "added", 0, 6, 6, "", 18, 108],
        ["total", "", "", "", "", "", "", 634],
      ],
      from: "8 × 73.50 = 588, −2 × 31 = −62, 6 × 18 = 108",
    },
    {
      args: [[["panels", 10, 5]], [["panels", 10, 6]], false],
      result: [
        ["panels", "changed", 10, 10, 0, 5, 6, 10],
        ["total", "", "", "", "", "", "", 10],
      ],
      from: "the same ten at 1.00 more",
    },
  ],
  calculate: changeOrder,
});
