import { isBlank, type Cell } from "../cell";
import { InputError } from "../inputError";
import { PANEL_FIELDS, type Panel, type PanelField } from "./panel";
import { notTaken } from "./bounds";
import type { RangeKind } from "./kind";

const TAKES = "the panel sheet's block: two columns, label and value";

/** The block's values as they came, by label in small letters; none has been read. */
export type PanelRows = ReadonlyMap<string, Cell>;

const plainLabel = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.trim().toLowerCase() : "";

/** The panel sheet's rows in any order; letter case and unknown labels don't matter. */
export const panelRows: RangeKind<PanelRows> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) => {
    if (cells.some((row) => row.length < 2)) throw notTaken(label, TAKES, cells[0]?.[0] ?? null);
    return new Map(cells.map((row) => [plainLabel(row[0]), row[1] ?? null] as const));
  },
};

/** One field: what stands in its cell, or holds where that is blank or absent, and what it is read as. */
export const readPanelField = (
  field: PanelField<unknown>,
  rows: PanelRows,
  label: string,
): { cell: Cell; value: unknown } => {
  const given = rows.get(field.label);
  const cell = isBlank(given) ? field.default : given;
  const fieldName = `${label} "${field.label}"`;
  if (cell === undefined || cell === null)
    throw new InputError(`${fieldName} is missing: it takes ${field.kind.takes}`);
  const value =
    field.kind.shape === "cell" ? field.kind.read(cell, fieldName) : field.kind.read([[cell]], fieldName);
  return { cell, value };
};

/** The panel sheet with every field read and checked. */
export const panelBlock: RangeKind<Panel> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) => {
    const rows = panelRows.read(cells, label);
    return Object.fromEntries(
      Object.entries(PANEL_FIELDS).map(([key, field]) => [key, readPanelField(field, rows, label).value]),
    ) as unknown as Panel;
  },
};
