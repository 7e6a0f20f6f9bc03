import { panelValueSpec } from "../../../functions/panel/panelValue";
import { LAYING_FIELDS, PANEL_FIELDS } from "../../../shared/kinds/panel";
import { NAMESPACE, qualifiedName } from "../../workbook/namespace";
import { tokensOf, type Token } from "../../workbook/formulas/tokens";
import {
  addressesIn,
  columnOf,
  readArea,
  type Area,
  type CellAddress,
  type SheetCellAddress,
} from "../../workbook/address";
import { formulaAt, type Contents } from "../../workbook/contents";
import { PANEL_NAME } from "../panelSheet";
import { contentsReader, type SheetReader, type WorkbookReader } from "./workbookReader";

/** A block of cells that a formula refers to. */
export interface Reference {
  readonly sheet: string;
  readonly area: Area;
}

const unquoted = ({ kind, text }: Token): string =>
  kind === "quoted" ? text.slice(1, -1).replaceAll("''", "'") : text;

/** `A:C` or `4:9`, cut off at the last cell in use. */
const wholeColumnsOrRows = (text: string, { rowCount, columnCount }: SheetReader): Area | undefined => {
  const [from = "", to = ""] = text.replaceAll("$", "").split(":");
  const [lastRow, lastColumn] = [rowCount - 1, columnCount - 1];
  if (/^[A-Za-z]+$/.test(from) && /^[A-Za-z]+$/.test(to))
    return { from: { row: 0, column: columnOf(from) }, to: { row: lastRow, column: columnOf(to) } };
  if (/^\d+$/.test(from) && /^\d+$/.test(to))
    return { from: { row: Number(from) - 1, column: 0 }, to: { row: Number(to) - 1, column: lastColumn } };
  return undefined;
};

/** `INDEX(Trims,4,2)`: the one cell of a block at fixed numbers; 0 means the whole row or column. */
const cellAtNumbers = (area: Area, rowNumber: number, columnNumber: number): Area => {
  const { from, to } = area;
  const row = rowNumber === 0 ? undefined : from.row + rowNumber - 1;
  const column = columnNumber === 0 ? undefined : from.column + columnNumber - 1;
  return {
    from: { row: row ?? from.row, column: column ?? from.column },
    to: { row: row ?? to.row, column: column ?? to.column },
  };
};

/** The numbers of `INDEX(block,4,2)`; `open` is the index of the token before `block`, `end` of the one after it. */
const fixedNumbers = (tokens: readonly Token[], open: number, end: number): [number, number] | undefined => {
  if (tokens[open]?.text !== "(" || tokens[open - 1]?.text.toUpperCase() !== "INDEX") return undefined;
  const signs = [0, 2, 4].map((step) => tokens[end + step]?.text).join("");
  const [row, column] = [tokens[end + 1], tokens[end + 3]];
  return signs === ",,)" && row?.kind === "number" && column?.kind === "number"
    ? [Number(row.text), Number(column.text)]
    : undefined;
};

const PANEL_VALUE = qualifiedName(panelValueSpec);

/** `GABLE.PANELVALUE(Panel,A5)` reads one row of the block: the row with the label in A5. */
const labeledRow = (
  tokens: readonly Token[],
  block: number,
  home: SheetReader | undefined,
): string | undefined => {
  const isLookUp = tokens[block - 2]?.text.toUpperCase() === PANEL_VALUE && tokens[block - 1]?.text === "(";
  const label = tokens[block + 2];
  if (!isLookUp || label?.kind !== "reference" || !home) return undefined;
  return String(home.valueAt(readArea(label.text).from)).toLowerCase();
};

/** The one row of a block whose first cell holds a label; the whole block where none does. */
const rowLabeled = (label: string, area: Area, sheet: SheetReader | undefined): Area => {
  const { from, to } = area;
  for (let row = from.row; sheet && row <= Math.min(to.row, sheet.rowCount - 1); row++)
    if (String(sheet.valueAt({ row, column: from.column }) ?? "").toLowerCase() === label)
      return { from: { ...from, row }, to: { ...to, row } };
  return area;
};

const PANEL = PANEL_NAME.toLowerCase();
const LAID_BY: readonly string[] = LAYING_FIELDS.map((key) => PANEL_FIELDS[key].label);

/** `GABLE.PANELCOUNT(D4:H4,Panel)` gets the whole panel block and reads only the rows that laying panels depends on. */
const isLaidBy = (tokens: readonly Token[], block: number): boolean => {
  if (tokens[block]?.text.toLowerCase() !== PANEL) return false;
  let depth = 0;
  for (let at = block - 1; at > 0; at--) {
    const { text } = tokens[at] as Token;
    if (text === ")") depth++;
    if (text === "(" && --depth < 0)
      return tokens[at - 1]?.text.toUpperCase().startsWith(`${NAMESPACE}.`) ?? false;
  }
  return false;
};

const laidBy = (area: Area, sheet: SheetReader | undefined): Area[] => {
  const rows = LAID_BY.map((label) => rowLabeled(label, area, sheet)).filter(
    ({ from, to }) => from.row === to.row,
  );
  return rows.length > 0 ? rows : [area];
};

/** The blocks that a formula refers to, by their addresses or by names that stand for a range; `home` is the formula's own sheet. */
export const referencesIn = (formula: string, home: string, workbook: WorkbookReader): Reference[] => {
  const read = (text: string, depth: number): Reference[] => {
    const tokens = tokensOf(text);
    const found: Reference[] = [];
    for (let at = 0; at < tokens.length; at++) {
      const token = tokens[at] as Token;
      if (token.kind === "word" && tokens[at + 1]?.text !== "(" && tokens[at + 1]?.text !== "!") {
        const target = workbook.nameTarget(token.text);
        // Names may refer to each other in a circle.
        if (target === undefined || depth >= 4) continue;
        const numbers = fixedNumbers(tokens, at - 1, at + 1);
        const label = labeledRow(tokens, at, workbook.sheet(home));
        const narrowed = ({ sheet, area }: Reference): Area[] => {
          if (label !== undefined) return [rowLabeled(label, area, workbook.sheet(sheet))];
          if (isLaidBy(tokens, at)) return laidBy(area, workbook.sheet(sheet));
          return [numbers ? cellAtNumbers(area, ...numbers) : area];
        };
        const blocks = read(target, depth + 1);
        found.push(
          ...blocks.flatMap((block) => narrowed(block).map((area) => ({ sheet: block.sheet, area }))),
        );
        continue;
      }
      if (token.kind !== "reference") continue;
      const before = tokens[at - 2];
      const sheet = tokens[at - 1]?.text === "!" && before ? unquoted(before) : home;
      const target = workbook.sheet(sheet);
      if (!target) continue;
      const [colon, end] = [tokens[at + 1], tokens[at + 2]];
      const isRange = colon?.text === ":" && end?.kind === "reference";
      const whole = wholeColumnsOrRows(token.text, target);
      if (whole) found.push({ sheet, area: whole });
      else
        found.push({
          sheet,
          area: readArea(`${token.text}${isRange ? `:${end.text}` : ""}`.replaceAll("$", "").toUpperCase()),
        });
      if (isRange) at += 2;
    }
    return found;
  };
  return read(formula, 0);
};

/** The cells of a block, as far as its sheet is in use. */
export const cellsOf = ({ sheet, area }: Reference, workbook: WorkbookReader): SheetCellAddress[] => {
  const { rowCount = 0, columnCount = 0 } = workbook.sheet(sheet) ?? {};
  const to = {
    row: Math.min(area.to.row, rowCount - 1),
    column: Math.min(area.to.column, columnCount - 1),
  };
  return addressesIn({ from: area.from, to }).map((cell) => ({ sheet, ...cell }));
};

/** What was found in a workbook's contents: every line of an order leads over the same cells. */
const foundIn = new WeakMap<Contents, Map<string, readonly Reference[]>>();

/** The blocks that a cell's formula refers to; none where it has no formula. */
export const referencesOf = (contents: Contents, sheet: string, place: CellAddress): readonly Reference[] => {
  const there = contents.sheets.get(sheet);
  const formula = there ? formulaAt(there, place) : "";
  if (formula === "") return [];
  const found = foundIn.get(contents) ?? new Map<string, readonly Reference[]>();
  foundIn.set(contents, found);
  const key = `${sheet}\n${formula}`;
  const references = found.get(key) ?? referencesIn(formula, sheet, contentsReader(contents));
  found.set(key, references);
  return references;
};
