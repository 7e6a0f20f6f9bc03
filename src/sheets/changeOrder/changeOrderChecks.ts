import { FIRST_DATE_SERIAL, LAST_DATE_SERIAL } from "../../../shared/sheetDate";
import { isEmpty } from "../../workbook/formula";
import { warningAbout, listItemsWhere } from "../itemWarnings";
import type { SealedBlock } from "../sealedBlock";
import type { ExistingChangeOrder } from "./existingChangeOrders";
import {
  changeColumn,
  EACH_LINE,
  GIVEN_BACK,
  KEPT,
  ON_THE_TOTAL,
  termCell,
  TERMS,
  DIFFERENT_PACKS,
  type ChangeColumn,
  type Term,
} from "./changeOrderLayout";
import { editedWarning, sealedBlocksOf, statusColumn } from "./seals";
import {
  itemKeyFormula,
  itemNameReference,
  orderColumnReference,
  type Item,
  type ComparedOrder,
} from "./comparedOrders";

/** What was signed and is not as it was; the first seals are theirs. */
const editedSigned = (signed: readonly SealedBlock[], sealsRow: number): string[] =>
  signed.map(({ sheet }, index) => editedWarning(sealsRow + index, sheet, "it was signed"));

/** For each of some items 1 where a list of columns and cells has it, letter by letter; MATCH would take `*` and `?` for any text. */
const isIn = (list: readonly string[], items: string): string => {
  const LINE = "CHAR(10)";
  const listed = `${LINE}&TEXTJOIN(${LINE},TRUE,${list.map(itemKeyFormula).join(",")})&${LINE}`;
  return `IF(ISNUMBER(FIND(${LINE}&${itemKeyFormula(items)}&${LINE},${listed})),1,0)`;
};

/** For each item of a column 1 where an item above it is the same. */
const isRepeated = (items: string): string => {
  const isSame = `EXACT(${itemKeyFormula(items)},TRANSPOSE(${itemKeyFormula(items)}))`;
  return `IF(MMULT(${isSame}*(ROW(${items})>TRANSPOSE(ROW(${items}))),ROW(${items})^0)>0,1,0)`;
};

/** So many rows below a live order are watched for lines that it gains. */
const ROWS_WATCHED = 50;

/**
 * What an order has that this sheet doesn't list: a live one may gain lines, have one twice, or lose a name after this sheet was
 * made, and this sheet's own items may be retyped.
 */
const ofOrder = ({ order, sealed }: ComparedOrder, listed: readonly string[]): string[] => {
  const watched = sealed ? order : { ...order, lastRow: order.lastRow + ROWS_WATCHED };
  const items = orderColumnReference(watched, "item");
  const toOrder = orderColumnReference(watched, "toOrder");
  const isOrdered = `IF(ISNUMBER(${toOrder}),IF(${toOrder}>0,1,0),0)`;
  const isUnlisted = `1-${isIn(listed, items)}`;
  const isSecond = `IF(LEN(${items})=0,0,${isRepeated(items)})`;
  const isNameless = `IF(LEN(${items})=0,1,0)`;
  const unlisted = warningAbout(
    sealed
      ? "this sheet no longer lists"
      : "the order has gained what this sheet doesn't list, make it again",
    listItemsWhere(items, `${isOrdered}*(${isUnlisted})>0`),
  );
  // What is sealed was read when this sheet was made: it lost no name and has no item twice.
  if (sealed) return [unlisted];
  return [
    warningAbout(
      "the order has no item in row",
      `TEXTJOIN(", ",TRUE,IF(${isOrdered}*${isNameless}>0,ROW(${items}),""))`,
    ),
    unlisted,
    warningAbout("the order has an item twice", listItemsWhere(items, `${isSecond}>0`)),
  ];
};

const oneOf = (lines: number, term: Term, words: readonly string[]): string =>
  `IF(OR(${words.map((word) => `${termCell(lines, term)}="${word}"`).join(",")}),"","choose ${words.join(" or ")}")`;

const SHARES = ["overheadRate", "profitRate", "taxRate", "retainageRate"] as const;

/** A term that is a number within its bounds. */
const needs = (lines: number, term: Term, what: string, isTaken: (cell: string) => string): string => {
  const cell = termCell(lines, term);
  const refused = `"${TERMS[term]} takes ${what}"`;
  return `IF(ISNUMBER(${cell}),IF(${isTaken(cell)},"",${refused}),${refused})`;
};

/** A term that may be blank too. */
const takes = (lines: number, ...of: [term: Term, what: string, isTaken: (cell: string) => string]): string =>
  `IF(${isEmpty(termCell(lines, of[0]))},"",${needs(lines, ...of)})`;

/** Everything that prevents a total, as one text; blank where nothing does. */
export const checkFormula = (
  base: ComparedOrder,
  now: ComparedOrder,
  listed: readonly Item[],
  previous: readonly ExistingChangeOrder[],
  sealsRow: number,
): string => {
  const lines = listed.length;
  const signed = sealedBlocksOf([base, now]);
  const column = (of: ChangeColumn): string => changeColumn(lines, of);
  const [items, taxable] = [column("item"), column("taxable")];
  const noAmount = (of: ChangeColumn): string => `IF(ISNUMBER(${column(of)}),IF(${column(of)}<0,1,0),1)`;
  const noPrice = (quantity: "orderBase" | "orderNow", price: "priceBase" | "priceNow"): string =>
    `IF(ISNUMBER(${column(quantity)}),IF(${column(quantity)}>0,${noAmount(price)},0),0)`;
  /** An item without a price in both orders, with the same quantity, costs nothing. */
  const isStill = `IF(ISNUMBER(${column("orderChange")}),(${column("orderChange")}=0)*(LEN(${column("priceBase")})=0)*(LEN(${column("priceNow")})=0),0)`;
  const each = [
    ...editedSigned(signed, sealsRow),
    ...(previous.length === 0 ? [] : [statusColumn(sealsRow + signed.length, previous.length)]),
    ...ofOrder(base, [
      items,
      ...listed.flatMap(({ former }) => (former ? [itemNameReference(base.order, former)] : [])),
    ]),
    ...ofOrder(now, [items]),
    warningAbout("this sheet has an item twice", listItemsWhere(items, `${isRepeated(items)}>0`)),
    warningAbout(
      "the quantity is no number of 0 or more",
      listItemsWhere(items, `${noAmount("orderBase")}+${noAmount("orderNow")}>0`),
    ),
    warningAbout(
      "no price of 0 or more for",
      listItemsWhere(
        items,
        `(${noPrice("orderBase", "priceBase")}+${noPrice("orderNow", "priceNow")})*(1-${isStill})>0`,
      ),
    ),
    warningAbout(
      "bought in other packs than at base, pack it as then or give it another name",
      listItemsWhere(
        items,
        `IF(ISTEXT(${column("orderChange")}),${column("orderChange")}="${DIFFERENT_PACKS}",FALSE)`,
      ),
    ),
    warningAbout(
      "the need is no number of 0 or more",
      listItemsWhere(items, `${noAmount("neededBase")}+${noAmount("neededNow")}>0`),
    ),
    warningAbout(
      "labor for each is a number of 0 or more, even for returned items",
      listItemsWhere(items, `IF(LEN(${column("laborEach")})=0,0,${noAmount("laborEach")})>0`),
    ),
    warningAbout("taxable is yes or no", listItemsWhere(items, `(${taxable}<>"yes")*(${taxable}<>"no")>0`)),
    needs(
      lines,
      "date",
      "a date, as 2026-06-01",
      (cell) => `AND(${cell}>=${FIRST_DATE_SERIAL},${cell}<${LAST_DATE_SERIAL + 1})`,
    ),
    oneOf(lines, "deductions", [GIVEN_BACK, KEPT]),
    oneOf(lines, "taxRounding", [EACH_LINE, ON_THE_TOTAL]),
    ...SHARES.map((term) =>
      takes(lines, term, "0 to 1, as 0.1 or 10%", (cell) => `AND(${cell}>=0,${cell}<=1)`),
    ),
    takes(lines, "days", "a whole number", (cell) => `${cell}=INT(${cell})`),
    takes(lines, "contract", "a number of 0 or more", (cell) => `${cell}>=0`),
  ];
  return `TEXTJOIN("; ",TRUE,${each.join(",")})`;
};
