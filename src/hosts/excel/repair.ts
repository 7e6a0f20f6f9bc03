import { NAMESPACE } from "../../namespace";
import type { Repaired } from "../host";
import type { ExcelEntry } from "./excelHost";

const UNKNOWN_NAME = "#NAME?";

/** How a file names our functions, where Excel has opened it before the add-in was there. (To be seen in a real save.) */
const AS_SAVED = new RegExp(`_xldudf_${NAMESPACE}_`, "gi");
const OURS = new RegExp(`\\b${NAMESPACE}\\.|_xldudf_${NAMESPACE}_`, "i");

/** A formula to enter again, and the cell that it stands in. */
interface Lost {
  readonly cell: Excel.Range;
  readonly formula: string;
}

/** Cells of ours that show #NAME?: such a workbook was opened before the functions were there. */
const lostIn = (used: Excel.Range): Lost[] =>
  (used.values as unknown[][]).flatMap((line, row) =>
    line.flatMap((value, column): Lost[] => {
      const formula = (used.formulas as unknown[][])[row]?.[column];
      return value === UNKNOWN_NAME && typeof formula === "string" && OURS.test(formula)
        ? [{ cell: used.getCell(row, column), formula: formula.replace(AS_SAVED, `${NAMESPACE}.`) }]
        : [];
    }),
  );

/** Enters again every formula of ours that shows #NAME?, calculates, and says what came of it. */
export const repair = (excel: ExcelEntry): Promise<Repaired> =>
  excel.run(async (context) => {
    const { worksheets, application } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const sheets = worksheets.items.map((sheet) => ({ sheet, used: sheet.getUsedRangeOrNullObject(true) }));
    for (const { sheet, used } of sheets) {
      sheet.protection.load("protected");
      used.load("values,formulas");
    }
    await context.sync();

    const withLost = sheets
      .filter(({ used }) => !used.isNullObject)
      .map(({ sheet, used }) => ({ sheet, lost: lostIn(used) }))
      .filter(({ lost }) => lost.length > 0);
    const lost = withLost.filter(({ sheet }) => !sheet.protection.protected).flatMap((each) => each.lost);
    application.suspendScreenUpdatingUntilNextSync();
    for (const { cell, formula } of lost) cell.formulas = [[formula]];
    if (lost.length > 0) application.calculate("Full");
    for (const { cell } of lost) cell.load("values");
    await context.sync();
    return {
      entered: lost.length,
      stillUnknown: lost.filter(({ cell }) => cell.values[0]?.[0] === UNKNOWN_NAME).length,
      protectedSheets: withLost
        .filter(({ sheet }) => sheet.protection.protected)
        .map(({ sheet }) => sheet.name),
    };
  });
