import { PANEL_FIELDS, type Panel } from "../../shared/kinds/panel";
import { panelValueSpec } from "../../functions/panel/panelValue";
import { a1, absoluteA1 } from "../workbook/address";
import { call, unlessEmpty } from "../workbook/formula";
import {
  formula,
  number,
  text,
  value,
  type PlannedCell,
  type PlannedName,
  type SheetPlan,
} from "../workbook/plan";
import { rowHeightsOf } from "../workbook/rowHeights";
import { cautionCells } from "./cautionCells";

/** The whole block's name: templates find the panel in use by it, and functions take it as one argument. */
export const PANEL_NAME = "Panel";

type FieldKey = keyof typeof PANEL_FIELDS;
const FIELD_KEYS = Object.keys(PANEL_FIELDS) as FieldKey[];

/** The name of the value in use of one field, made of its label: `exposed height` is `ExposedHeight`. */
export const panelFieldName = (key: FieldKey): string =>
  PANEL_FIELDS[key].label.replace(/(?:^|[ -])([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** The names of all the values. */
export const PANEL_VALUE_NAMES = FIELD_KEYS.map(panelFieldName);

/** What a person typed for some of the fields; the rest show their defaults. */
export type PanelValues = Partial<Record<keyof Panel, string | number>>;

const FIRST_ROW = 3;
const [LABEL, VALUE, IN_USE, UNIT, NOTE] = [0, 1, 2, 3, 4];

/** What holds: the value in the field's own unit, or its default; a required field is quiet until it is filled. */
const inUse = (row: number, hasDefault: boolean): string => {
  const value = call(panelValueSpec, PANEL_NAME, a1({ row, column: LABEL }));
  return hasDefault ? `=${value}` : unlessEmpty(a1({ row, column: VALUE }), value);
};

const fieldCells = (key: FieldKey, row: number, typed: PanelValues): PlannedCell[] => {
  const field = PANEL_FIELDS[key];
  const shown = typed[key] ?? ("default" in field ? field.default : undefined);
  const content = typeof shown === "number" ? number(shown) : typeof shown === "string" ? text(shown) : null;
  return [
    { row, column: LABEL, content: text(field.label), style: "label" },
    { row, column: VALUE, content, style: "input" },
    { row, column: IN_USE, content: formula(inUse(row, "default" in field)), style: "result" },
    { row, column: UNIT, content: text(field.unit), style: "centered" },
    {
      row,
      column: NOTE,
      content: text("default" in field ? field.note : `${field.note} (required)`),
      style: "note",
    },
  ];
};

/** One block that describes the shingle in use, from its maker's installation guide. */
export const panelSheet = (
  sheetName: string,
  typed: PanelValues,
): { sheet: SheetPlan; names: PlannedName[] } => {
  const rowOf = (index: number): number => FIRST_ROW + index;
  const lastRow = rowOf(FIELD_KEYS.length - 1);
  const headings = ["Label", "Value", "In use", "Unit", "Note"].map((heading, column): PlannedCell => ({
    row: FIRST_ROW - 1,
    column,
    content: text(heading),
    style: "heading",
  }));
  const names: PlannedName[] = FIELD_KEYS.map((key, index) => ({
    name: panelFieldName(key),
    sheet: sheetName,
    range: absoluteA1({ row: rowOf(index), column: IN_USE }),
  }));
  const from = absoluteA1({ row: FIRST_ROW, column: LABEL });
  const to = absoluteA1({ row: lastRow, column: VALUE });
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text("Panel"), style: "title" },
    {
      row: 1,
      column: 0,
      content: value(
        "The shingle of every takeoff here, from its maker's guide. Type under Value, in the unit shown or as 2 ft. Keep the labels' wording.",
      ),
      style: "note",
    },
    ...headings,
    ...FIELD_KEYS.flatMap((key, index) => fieldCells(key, rowOf(index), typed)),
    ...cautionCells(lastRow + 2),
  ];
  return {
    sheet: {
      name: sheetName,
      frozenRows: FIRST_ROW,
      print: "one page wide, portrait",
      columnWidths: [170, 150, 130, 70, 330],
      rowHeights: rowHeightsOf(cells),
      cells,
    },
    names: [{ name: PANEL_NAME, sheet: sheetName, range: `${from}:${to}` }, ...names],
  };
};
