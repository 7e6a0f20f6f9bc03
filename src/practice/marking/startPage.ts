import type { Cell } from "../../../shared/cell";
import type { Contents } from "../../workbook/contents";
import { START_SHEET } from "../sheets/studentSheets";
import type { VersionOptions } from "../classOptions";
import { readClassLine } from "../class/practiceClass";

/** The version that one of a sheet's cells says the sheet is of; undefined where none does. */
export const versionOn = (cells: Iterable<Cell>): VersionOptions | undefined => {
  for (const cell of cells) {
    const version = typeof cell === "string" ? readClassLine(cell) : undefined;
    if (version) return version;
  }
  return undefined;
};

/** Whether a workbook is one that students fill in. */
export const isStudentsWorkbook = ({ sheets }: Pick<Contents, "sheets">): boolean =>
  versionOn(sheets.get(START_SHEET)?.cells.flat() ?? []) !== undefined;
