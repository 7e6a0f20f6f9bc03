import type { Cell } from "../../../shared/cell";
import type { Contents } from "../../workbook/contents";
import { readClassLine } from "../class/classLine";
import type { VersionOptions } from "../class/classOptions";
import { START_SHEET } from "../sheets/studentSheets";

/** The version in a sheet's class line, wherever it is; undefined where there is none. */
export const versionOn = (cells: Iterable<Cell>): VersionOptions | undefined => {
  for (const cell of cells) {
    const version = typeof cell === "string" ? readClassLine(cell) : undefined;
    if (version) return version;
  }
  return undefined;
};

/** Whether a workbook is one that students fill in. */
export const isStudentWorkbook = ({ sheets }: Pick<Contents, "sheets">): boolean =>
  versionOn(sheets.get(START_SHEET)?.cells.flat() ?? []) !== undefined;
