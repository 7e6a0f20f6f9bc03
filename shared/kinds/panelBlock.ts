import type { Cell, Matrix } from "../cell";
import { InputError } from "../inputError";
import { PANEL_FIELDS, type Panel, type PanelField } from "../panel";
import { notTaken } from "./bounds";
import type { RangeKind } from "./kind";

const TAKES = "the panel sheet's block: two columns, label and value";

const plainLabel = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.trim().toLowerCase() : "";
const isBlank = (cell: Cell): boolean => cell === null || cell === "";

const readField = (entry: PanelField<unknown>, values: ReadonlyMap<string, Cell>, label: string): unknown => {
  const given = values.get(entry.label);
  const cell = given === undefined || isBlank(given) ? entry.default : given;
  const fieldName = `${label} "${entry.label}"`;
  if (cell === undefined || cell === null)
    throw new InputError(`${fieldName} is missing: it takes ${entry.kind.takes}`);
  return entry.kind.shape === "cell"
    ? entry.kind.read(cell, fieldName)
    : entry.kind.read([[cell]], fieldName);
};

/** The panel sheet, looked up by label in any order; letter case and unknown labels don't matter. */
export const panelBlock: RangeKind<Panel> = {
  shape: "range",
  takes: TAKES,
  read: (cells: Matrix, label) => {
    if (cells.some((row) => row.length < 2)) throw notTaken(label, TAKES, cells[0]?.[0] ?? null);
    const values = new Map(cells.map((row) => [plainLabel(row[0]), row[1] ?? null] as const));
    return Object.fromEntries(
      Object.entries(PANEL_FIELDS).map(([key, entry]) => [key, readField(entry, values, label)]),
    ) as unknown as Panel;
  },
};
