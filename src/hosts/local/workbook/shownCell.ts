import type { Injector, Workbook, Worksheet } from "@univerjs/core";
import { CellError } from "../../../../shared/cell";
import type { CellAddress, SheetCellAddress } from "../../../workbook/address";
import { errorOrigin } from "../cells/errorOrigin";
import type { ReadCell } from "../cells/readSheet";
import { formulaAt } from "../cells/survey";
import { cellDataAt, fromCellData, type CellInput } from "../engine/cellData";

/** A cell as a person sees it. */
export interface ShownCell extends SheetCellAddress {
  readonly value: CellInput;
  /** The number format; blank if the cell has none. */
  readonly format: string;
  readonly formula: string;
  /** What the cell's error means, and which cell it comes from; blank if the cell shows no error. */
  readonly errorMessage: string;
}

export const readShownCell = (
  injector: Injector,
  workbook: Workbook,
  read: ReadCell,
  sheet: Worksheet,
  { row, column }: CellAddress,
): ShownCell => {
  const data = cellDataAt(injector, sheet, row, column);
  const isError = read(sheet, row, column) instanceof CellError;
  return {
    sheet: sheet.getName(),
    row,
    column,
    value: fromCellData(data),
    format: workbook.getStyles().get(data?.s)?.n?.pattern ?? "",
    formula: formulaAt(injector, sheet, row, column),
    errorMessage: isError ? errorOrigin(injector, workbook, read, { sheet, row, column }) : "",
  };
};
