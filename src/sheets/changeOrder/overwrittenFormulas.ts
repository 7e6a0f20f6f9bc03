import { isBlank } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { areaAddress, addressesIn, type CellAddress } from "../../workbook/address";
import { contiguousAreas } from "../../workbook/contiguousAreas";
import { formulaAt, valueAt, type Contents } from "../../workbook/contents";
import { referencesOf } from "../trace/references";
import {
  agreedChangeOrdersIn,
  sheetsListedOn,
  amountAddress,
  termAddress,
  termValue,
  type ExistingChangeOrder,
} from "./existingChangeOrders";
import { AMOUNTS, CHANGE_COLUMNS, CHECK_ROW, CALCULATED_COLUMNS, type Amount } from "./changeOrderLayout";
import { issueSeal } from "./seals";

/** The cells of items; the check watches them, wherever rows were inserted. */
const placesOfItems = (workbook: Contents, { sheet }: ExistingChangeOrder): CellAddress[] => {
  const watched = referencesOf(workbook, sheet, { row: CHECK_ROW, column: 0 }).find(
    (reference) => reference.sheet === sheet && reference.area.from.column === CHANGE_COLUMNS.item,
  );
  return watched ? addressesIn(watched.area) : [];
};

/** What the lines work out. A row that a person put between them, for a remark, works nothing out. */
const placesInLines = (workbook: Contents, change: ExistingChangeOrder): CellAddress[] =>
  placesOfItems(workbook, change).flatMap(({ row }) => {
    const places = CALCULATED_COLUMNS.map((column) => ({ row, column: CHANGE_COLUMNS[column] }));
    const isLine = places.some(
      (place) =>
        formulaAt(change.contents, place) !== "" || typeof valueAt(change.contents, place) === "number",
    );
    return isLine ? places : [];
  });

/** The contract sum goes on from the change order before, where that had one. */
const placeOfContract = (workbook: Contents, change: ExistingChangeOrder): CellAddress[] => {
  const listed = sheetsListedOn(workbook, change);
  const goesOn = agreedChangeOrdersIn(workbook).some(
    (each) => listed.has(each.sheet) && typeof termValue(each, "contract") === "number",
  );
  return goesOn ? [termAddress(change, "contract")] : [];
};

/** `D7 and M7 on "Change order 1" were calculated and have been cleared`; nothing for no cells. */
const lostInWords = (sheet: string, places: readonly CellAddress[], how: string): string[] => {
  if (places.length === 0) return [];
  const where = new Intl.ListFormat("en").format(contiguousAreas(places).map(areaAddress));
  const [was, has] = places.length === 1 ? ["was", "has"] : ["were", "have"];
  return [`${where} on "${sheet}" ${was} calculated and ${has} been ${how}`];
};

/** Refuses a change order that isn't issued yet and in which a calculated cell was overwritten: it no longer follows the order. */
export const refuseOverwrittenFormulas = (workbook: Contents, change: ExistingChangeOrder): void => {
  if (issueSeal(change) !== undefined) return;
  const lost = [
    ...placesInLines(workbook, change),
    ...(Object.keys(AMOUNTS) as Amount[]).map((amount) => amountAddress(change, amount)),
    ...placeOfContract(workbook, change),
  ].filter((place) => formulaAt(change.contents, place) === "");
  const isCleared = (place: CellAddress): boolean => isBlank(valueAt(change.contents, place));
  const sentences = [
    ...lostInWords(
      change.sheet,
      lost.filter((place) => !isCleared(place)),
      "overwritten",
    ),
    ...lostInWords(change.sheet, lost.filter(isCleared), "cleared"),
  ];
  if (sentences.length === 0) return;
  throw new InputError(
    `${sentences.join("; ")}: undo that, or make the change order again. Nothing was written.`,
  );
};
