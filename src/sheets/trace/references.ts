import { panelValueSpec } from "../../../functions/panel/panelValue";
import { highest } from "../../../shared/highest";
import { LAYING_FIELDS, PANEL_FIELDS } from "../../../shared/kinds/panel";
import { NAMESPACE, qualifiedName } from "../../workbook/namespace";
import { tokensOf, type Token } from "../../workbook/formulas/tokens";
import { columnOf, readArea, type Area, type CellAddress } from "../../workbook/address";
import { formulaAt, valueAt, type Contents, type SheetContents } from "../../workbook/contents";
import { PANEL_NAME } from "../panelSheet";

/** A block of cells that a formula refers to. */
export interface Reference {
  readonly sheet: string;
  readonly area: Area;
}

const unquoted = ({ kind, text }: Token): string =>
  kind === "quoted" ? text.slice(1, -1).replaceAll("''", "'") : text;

const longest = (lines: readonly (readonly unknown[])[]): number =>
  highest(
    lines.map(({ length }) => length),
    0,
  );

/** `A:C` or `4:9` as far as the sheet goes. */
const wholeLines = (text: string, { cells }: SheetContents): Area | undefined => {
  const [from = "", to = ""] = text.replaceAll("$", "").split(":");
  const [lastRow, lastColumn] = [cells.length - 1, longest(cells) - 1];
  if (/^[A-Za-z]+$/.test(from) && /^[A-Za-z]+$/.test(to))
    return { from: { row: 0, column: columnOf(from) }, to: { row: lastRow, column: columnOf(to) } };
  if (/^\d+$/.test(from) && /^\d+$/.test(to))
    return { from: { row: Number(from) - 1, column: 0 }, to: { row: Number(to) - 1, column: lastColumn } };
  return undefined;
};

/** `INDEX(Trims,4,2)`: the one cell of a block that stands at fixed numbers; 0 is the whole row or column. */
const picked = (area: Area, rowNumber: number, columnNumber: number): Area => {
  const { from, to } = area;
  const row = rowNumber === 0 ? undefined : from.row + rowNumber - 1;
  const column = columnNumber === 0 ? undefined : from.column + columnNumber - 1;
  return {
    from: { row: row ?? from.row, column: column ?? from.column },
    to: { row: row ?? to.row, column: column ?? to.column },
  };
};

/** The numbers of `INDEX(block,4,2)`, where the token before `block` is at `open` and the one behind it at `end`. */
const fixedNumbers = (tokens: readonly Token[], open: number, end: number): [number, number] | undefined => {
  if (tokens[open]?.text !== "(" || tokens[open - 1]?.text.toUpperCase() !== "INDEX") return undefined;
  const signs = [0, 2, 4].map((step) => tokens[end + step]?.text).join("");
  const [row, column] = [tokens[end + 1], tokens[end + 3]];
  return signs === ",,)" && row?.kind === "number" && column?.kind === "number"
    ? [Number(row.text), Number(column.text)]
    : undefined;
};

const PANEL_VALUE = qualifiedName(panelValueSpec);

/** `GABLE.PANELVALUE(Panel,A5)` reads one row of the block: the one that bears the label in A5. */
const labeledRow = (
  tokens: readonly Token[],
  block: number,
  home: SheetContents | undefined,
): string | undefined => {
  const isLookUp = tokens[block - 2]?.text.toUpperCase() === PANEL_VALUE && tokens[block - 1]?.text === "(";
  const label = tokens[block + 2];
  if (!isLookUp || label?.kind !== "reference" || !home) return undefined;
  return String(valueAt(home, readArea(label.text).from)).toLowerCase();
};

const rowBearing = (label: string, { from, to }: Area, sheet: SheetContents | undefined): Area => {
  const row = (sheet?.cells ?? []).findIndex(
    (line, at) => at >= from.row && at <= to.row && String(line[from.column] ?? "").toLowerCase() === label,
  );
  return row < 0 ? { from, to } : { from: { ...from, row }, to: { ...to, row } };
};

const PANEL = PANEL_NAME.toLowerCase();
const LAID_BY: readonly string[] = LAYING_FIELDS.map((key) => PANEL_FIELDS[key].label);

/** `GABLE.PANELCOUNT(D4:H4,Panel)` takes the whole panel sheet and reads the rows by which panels are laid. */
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

const laidBy = (area: Area, sheet: SheetContents | undefined): Area[] => {
  const rows = LAID_BY.map((label) => rowBearing(label, area, sheet)).filter(
    ({ from, to }) => from.row === to.row,
  );
  return rows.length > 0 ? rows : [area];
};

/** The blocks that a formula refers to, by their addresses or by names that stand for a range. */
const referencesIn = (
  formula: string,
  home: string,
  { sheets }: Contents,
  names: ReadonlyMap<string, string>,
): Reference[] => {
  const read = (text: string, depth: number): Reference[] => {
    const tokens = tokensOf(text);
    const found: Reference[] = [];
    for (let at = 0; at < tokens.length; at++) {
      const token = tokens[at] as Token;
      if (token.kind === "word" && tokens[at + 1]?.text !== "(" && tokens[at + 1]?.text !== "!") {
        const target = names.get(token.text.toLowerCase());
        // A name may stand for another, but not for ever.
        if (target === undefined || depth >= 4) continue;
        const numbers = fixedNumbers(tokens, at - 1, at + 1);
        const label = labeledRow(tokens, at, sheets.get(home));
        const narrowed = ({ sheet, area }: Reference): Area[] => {
          if (label !== undefined) return [rowBearing(label, area, sheets.get(sheet))];
          if (isLaidBy(tokens, at)) return laidBy(area, sheets.get(sheet));
          return [numbers ? picked(area, ...numbers) : area];
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
      const contents = sheets.get(sheet);
      if (!contents) continue;
      const [colon, end] = [tokens[at + 1], tokens[at + 2]];
      const isRange = colon?.text === ":" && end?.kind === "reference";
      const whole = wholeLines(token.text, contents);
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

/** What is known of one state of a workbook; every line of an order leads back over the same cells. */
interface Known {
  readonly names: ReadonlyMap<string, string>;
  readonly references: Map<string, readonly Reference[]>;
}
const knownOf = new WeakMap<Contents, Known>();

const known = (contents: Contents): Known => {
  const found = knownOf.get(contents) ?? {
    names: new Map([...contents.targets].map(([name, target]) => [name.toLowerCase(), target])),
    references: new Map(),
  };
  knownOf.set(contents, found);
  return found;
};

/** The blocks that a cell's formula refers to; none where it has no formula. */
export const referencesOf = (contents: Contents, sheet: string, place: CellAddress): readonly Reference[] => {
  const there = contents.sheets.get(sheet);
  const formula = there ? formulaAt(there, place) : "";
  if (formula === "") return [];
  const { names, references } = known(contents);
  const key = `${sheet}\n${formula}`;
  const found = references.get(key) ?? referencesIn(formula, sheet, contents, names);
  references.set(key, found);
  return found;
};
