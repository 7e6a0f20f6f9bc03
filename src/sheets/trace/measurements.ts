import { CellError, isBlank } from "../../../shared/cell";
import type { CellAddress, SheetCellAddress } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import { labelsIn, UNIT_HEADING, type CellLabel } from "./cellLabels";

/** A labeled value that an order depends on. */
export interface Measurement extends CellLabel {
  readonly unit: string;
  readonly value: string | number | boolean;
  readonly kind: "input" | "result";
}

export const measurementKey = ({ sheet, row, heading }: CellLabel): string =>
  [sheet, row, heading].join("\n").toLowerCase();

const isNumberInTable = (sheet: SheetContents, place: CellAddress): boolean =>
  formulaAt(sheet, place) !== "" && typeof valueAt(sheet, place) === "number";

/** The measurements behind some cells: these precedents, and the other calculated numbers of their sheets. Blank cells are left out. */
export const measurementsBehind = (
  contents: Contents,
  precedents: readonly SheetCellAddress[],
): Measurement[] => {
  const labelsFor = labelsIn(contents);
  const isTraced = new Set(precedents.map(({ sheet, row, column }) => `${row},${column},${sheet}`));
  const touched = new Set(precedents.map(({ sheet }) => sheet));
  return [...contents.sheets].flatMap(([name, sheet]) => {
    if (!touched.has(name)) return [];
    return sheet.cells.flatMap((line, row) =>
      line.flatMap((value, column): Measurement[] => {
        const place = { row, column };
        if (!isTraced.has(`${row},${column},${name}`) && !isNumberInTable(sheet, place)) return [];
        const label = labelsFor(name)?.at(place);
        if (!label || label.heading === UNIT_HEADING || isBlank(value) || value === null) return [];
        return [
          {
            ...label,
            // Written to a cell, a bare code would be an error again.
            value: value instanceof CellError ? `error ${value.code}` : value,
            kind: formulaAt(sheet, place) === "" ? "input" : "result",
          },
        ];
      }),
    );
  });
};
