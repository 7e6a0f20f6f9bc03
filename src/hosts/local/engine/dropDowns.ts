import {
  DataValidationErrorStyle,
  DataValidationType,
  type IRange,
  type ISheetDataValidationRule,
  type IWorkbookData,
} from "@univerjs/core";
import type { SheetPlan } from "../../../workbook/plan";
import type { BookSheet } from "../../../xlsx/book/book";
import { parseRange } from "../../../xlsx/book/a1References";

/** A list as a rule of the engine. A list in cells begins with an equals sign. */
const listRule = (
  uid: string,
  list: string,
  ranges: IRange[],
  error = `Pick one of ${list.replaceAll(",", ", ")}.`,
): ISheetDataValidationRule => ({
  uid,
  type: DataValidationType.LIST,
  formula1: list,
  allowBlank: true,
  showErrorMessage: true,
  errorStyle: DataValidationErrorStyle.WARNING,
  error,
  ranges,
});

/** A plan's drop-down lists as rules of the engine: one rule per list, for every cell that has it. */
export const dropDownRules = ({ cells }: SheetPlan): ISheetDataValidationRule[] => {
  const rangesByList = new Map<string, IRange[]>();
  for (const { row, column, choices } of cells) {
    if (!choices) continue;
    const list = choices.join(",");
    const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    rangesByList.set(list, [...(rangesByList.get(list) ?? []), range]);
  }
  return [...rangesByList].map(([list, ranges], index) => listRule(`list-${index}`, list, ranges));
};

/** Marks rules from a file. The file keeps them as they are, so they aren't written again. */
const FILE_RULE_PREFIX = "file-list-";
export const isFileRule = ({ uid }: ISheetDataValidationRule): boolean => uid.startsWith(FILE_RULE_PREFIX);

/** The part of a range within the sheet shown: a file's rule may cover a column to its end. */
const shownRange = (text: string, rowCount: number, columnCount: number): IRange | undefined => {
  const cells = parseRange(text);
  if (!cells || cells.from.row >= rowCount || cells.from.column >= columnCount) return undefined;
  const { from, to } = cells;
  return {
    startRow: from.row,
    endRow: Math.min(to.row, rowCount - 1),
    startColumn: from.column,
    endColumn: Math.min(to.column, columnCount - 1),
  };
};

/** A file's drop-down lists as rules of the engine. */
export const fileDropDownRules = (
  { dropDowns }: BookSheet,
  { rowCount = 0, columnCount = 0 }: { readonly rowCount?: number; readonly columnCount?: number },
): ISheetDataValidationRule[] =>
  dropDowns.flatMap(({ ranges, choices, from }, index) => {
    const shown = ranges.flatMap((range) => shownRange(range, rowCount, columnCount) ?? []);
    if (shown.length === 0) return [];
    const uid = `${FILE_RULE_PREFIX}${index}`;
    return from === undefined
      ? [listRule(uid, choices.join(","), shown)]
      : [listRule(uid, `=${from}`, shown, `Pick one of the entries in ${from.replaceAll("$", "")}.`)];
  });

/** The engine's resource for the rules of its sheets. */
export const dropDownsResource = (
  rulesBySheetId: Readonly<Record<string, readonly ISheetDataValidationRule[]>>,
): NonNullable<IWorkbookData["resources"]>[number] => ({
  name: "SHEET_DATA_VALIDATION_PLUGIN",
  data: JSON.stringify(rulesBySheetId),
});
