import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject, StringValueObject, type BaseValueObject } from "@univerjs/engine-formula";

type GetCellData = typeof BaseReferenceObject.prototype.getCellData;
type Compare = typeof StringValueObject.prototype.compare;

const wrappedReads = new WeakSet<GetCellData>();
const wrappedCompares = new WeakSet<Compare>();

/**
 * The engine treats a cell with an empty text and no formula as blank. For a cell that was just calculated, or that another
 * formula spills into, it has the result but not the formula, so A1 with ="" counts as blank. The fix marks such a result as a
 * formula's. A cell's own data stays as it is: someone who clears a cell leaves an empty text there and means a blank.
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

/** A blank compared with a text is an empty text. The engine does this only if the blank comes first; otherwise the blank is 0. */
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
 * Makes an empty text a text, as in every spreadsheet: if A1 is ="", then =A1*2 is #VALUE!, not 0, and ISBLANK(A1) is false. Our
 * own functions treat it as blank either way. Lasts for the life of the page or process; a second call changes nothing.
 */
export const keepEmptyTexts = (): void => {
  keepResults();
  compareWithBlanks();
};
