import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject, StringValueObject, type BaseValueObject } from "@univerjs/engine-formula";

type GetCellData = typeof BaseReferenceObject.prototype.getCellData;
type Compare = typeof StringValueObject.prototype.compare;

const wrappedReads = new WeakSet<GetCellData>();
const wrappedCompares = new WeakSet<Compare>();

/**
 * The engine takes a cell for blank where it holds an empty text and no formula; and what it has of a cell that was just
 * calculated, or that a neighbor fills, is the result alone. So where A1 is ="" the result is marked as a formula's here. A cell
 * of the sheet itself is left as it is: a person who empties one leaves an empty text there, and means a blank.
 */
const keepResults = (): void => {
  const original = BaseReferenceObject.prototype.getCellData;
  if (wrappedReads.has(original)) return;
  const getCellData: GetCellData = function (this: BaseReferenceObject, row, column) {
    const cell = original.call(this, row, column);
    if (cell?.v !== "" || cell.t !== CellValueType.STRING) return cell;
    const own = this.getCurrentActiveSheetData()?.cellData.getValue(row, column);
    return cell === own ? cell : { ...cell, f: "=" };
  };
  wrappedReads.add(getCellData);
  BaseReferenceObject.prototype.getCellData = getCellData;
};

/** Beside a text a blank is an empty text. The engine knows this where the blank comes first, and else takes it for 0. */
const compareWithBlanks = (): void => {
  const original = StringValueObject.prototype.compare;
  if (wrappedCompares.has(original)) return;
  const compare: Compare = function (this: StringValueObject, value: BaseValueObject, ...rest) {
    return original.call(this, value.isNull() ? StringValueObject.create("") : value, ...rest);
  };
  wrappedCompares.add(compare);
  StringValueObject.prototype.compare = compare;
};

/**
 * Makes an empty text a text, as in every spreadsheet: =A1*2 is #VALUE! where A1 is ="", not 0, and ISBLANK(A1) is false. Our
 * own functions take it for blank either way. Lasts for the life of the page or process; a second call changes nothing.
 */
export const keepEmptyTexts = (): void => {
  keepResults();
  compareWithBlanks();
};
