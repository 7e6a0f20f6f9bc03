import { a1, type Place } from "../../sheets/address";
import { needsApostrophe } from "../apostrophe";
import { needsArrayForm } from "./arrayForm";
import { fileStyleIndex, type Book, type BookCell, type BookSheet } from "./book";
import { rangeText } from "./cellAddress";
import { cellText, formulaText } from "./cellText";
import { cellChanges, type CellChange } from "./differences";
import { changeElement, prefixOf } from "./elementOrder";
import { fileFormula } from "./formulaForm";
import { allCellElements, cellElements, rowElements, sharedNumber, type CellElement } from "./sheetCells";
import {
  columnsChanges,
  dimensionChanges,
  validationChanges,
  frozenChanges,
  mergesChanges,
  pageChanges,
  protectionChanges,
} from "./sheetFrame";
import { rowPoints } from "./sizes";
import type { Splice } from "./splices";
import type { StylesDraft } from "./stylesDraft";
import { childOf, numberAttribute, type XmlElement, type XmlPart } from "./xml";
import { attributesText } from "./xmlText";

/** What a sheet needs of the rest of the package while it is written. */
export interface SheetTools {
  readonly styles: StylesDraft;
  readonly looks: Book["styles"];
  /** The mark of a formula that spills. */
  readonly dynamicArray: () => string;
}

const key = (row: number, column: number): string => `${row},${column}`;

const blockOf = (
  { row, column }: Place,
  cell: BookCell | undefined,
): { rows: number; columns: number } & Place => ({
  row,
  column,
  rows: cell?.spill?.rows ?? 1,
  columns: cell?.spill?.columns ?? 1,
});

const isWithin = ({ row, column }: Place, block: ReturnType<typeof blockOf>): boolean =>
  row >= block.row &&
  row < block.row + block.rows &&
  column >= block.column &&
  column < block.column + block.columns;

/**
 * A plain formula of the file means one cell where its result would spill here: it stays as the file has it, and what it fills here
 * isn't written.
 */
const withoutOldPlainSpills = (
  changes: readonly CellChange[],
  elements: ReadonlyMap<string, CellElement>,
  now: BookSheet,
  before: BookSheet,
): CellChange[] => {
  const blocks: ReturnType<typeof blockOf>[] = [];
  for (const [row, cells] of now.cells)
    for (const [column, cell] of cells) {
      const was = before.cells.get(row)?.get(column);
      const formula = childOf(elements.get(key(row, column))?.element, "f");
      if (!formula || formula.attributes.get("t") === "array" || cell.formula !== was?.formula) continue;
      if (cell.spill) blocks.push(blockOf({ row, column }, cell));
      if (was?.spill) blocks.push(blockOf({ row, column }, was));
    }
  return changes.filter((change) => {
    const isOfFormula =
      change.now?.isSpilled === true || change.before?.isSpilled === true || change.now?.spill !== undefined;
    return !(isOfFormula && blocks.some((block) => isWithin(change, block)));
  });
};

/** Cells whose shared formula was written in a cell that now has another: each gets its own. */
const orphanedChanges = (
  cells: readonly CellElement[],
  changes: readonly CellChange[],
  before: BookSheet,
  now: BookSheet,
): CellChange[] => {
  const changed = new Set(changes.map(({ row, column }) => key(row, column)));
  const hasNewFormula = ({ row, column }: Place): boolean =>
    before.cells.get(row)?.get(column)?.formula !== now.cells.get(row)?.get(column)?.formula;
  const lost = new Set(
    cells
      .filter((cell) => childOf(cell.element, "f")?.text && hasNewFormula(cell))
      .flatMap((cell) => sharedNumber(cell) ?? []),
  );
  return cells.flatMap((cell) => {
    const { row, column } = cell;
    if (!lost.has(sharedNumber(cell) ?? "") || changed.has(key(row, column))) return [];
    return [
      { row, column, before: before.cells.get(row)?.get(column), now: now.cells.get(row)?.get(column) },
    ];
  });
};

class SheetPatch {
  private readonly x: string;
  private readonly cells: readonly CellElement[];
  private readonly elements: ReadonlyMap<string, CellElement>;

  constructor(
    private readonly part: XmlPart,
    private readonly before: BookSheet,
    private readonly now: BookSheet,
    private readonly tools: SheetTools,
  ) {
    this.x = prefixOf(part.root);
    this.cells = allCellElements(part.root);
    this.elements = new Map(this.cells.map((cell) => [key(cell.row, cell.column), cell]));
  }

  private styleOf(cell: BookCell | undefined, element: CellElement | undefined, place: Place): number {
    const text =
      typeof cell?.value === "string" && cell.formula === undefined && !cell.isSpilled ? cell.value : "";
    const isQuoted = text !== "" && needsApostrophe(text);
    const inFile = numberAttribute(element?.element, "s");
    // A new cell of a styled row or column looks like them.
    const line = this.before.rows.get(place.row)?.style ?? this.before.columns.get(place.column)?.style;
    const base = inFile ?? fileStyleIndex(line);
    const own = fileStyleIndex(cell?.style);
    if (own !== undefined || cell?.style === undefined)
      return this.tools.styles.indexOf(undefined, own ?? base ?? 0, isQuoted);
    return this.tools.styles.indexOf(this.tools.looks.get(cell.style), base, isQuoted);
  }

  private formulaElement(
    place: Place,
    cell: BookCell,
    element: CellElement | undefined,
    isKept: boolean,
  ): { text: string; isDynamic: boolean } | undefined {
    if (cell.formula === undefined) return undefined;
    const old = childOf(element?.element, "f");
    if (isKept && old && sharedNumber({ ...place, element: old }) === undefined) {
      const { source } = this.part;
      const ref = old.attributes.get("t") === "array" ? this.blockText(place, cell) : undefined;
      const wasRef = old.attributes.get("ref");
      const text =
        ref === undefined || wasRef === ref || !cell.spill
          ? source.slice(old.start, old.end)
          : changeElement(source, old, { attributes: { ref } }).text;
      return { text, isDynamic: false };
    }
    const isDynamic = cell.spill !== undefined || needsArrayForm(cell.formula);
    return {
      text: formulaText(
        fileFormula(cell.formula),
        isDynamic ? this.blockText(place, cell) : undefined,
        this.x,
      ),
      isDynamic,
    };
  }

  private blockText(place: Place, cell: BookCell): string {
    const { rows, columns } = blockOf(place, cell);
    return rangeText({ from: place, to: { row: place.row + rows - 1, column: place.column + columns - 1 } });
  }

  /** The new text of a cell; empty where nothing is left of it. */
  private newText({ row, column, before, now }: CellChange, isOrphan: boolean): string {
    const place = { row, column };
    const element = this.elements.get(key(row, column));
    const isKept = !isOrphan && before?.formula === now?.formula;
    const style = this.styleOf(now, element, place);
    const formula = now && this.formulaElement(place, now, element, isKept);
    if (now === undefined || (now.value === null && formula === undefined)) {
      if (style === 0) return "";
      return `<${this.x}c${attributesText({ r: a1(place), s: style })}/>`;
    }
    const metadata = element?.element.attributes.get("cm");
    const kept: Record<string, string> = {};
    if (isKept && formula && metadata !== undefined) kept["cm"] = metadata;
    if (formula?.isDynamic) kept["cm"] = this.tools.dynamicArray();
    const extras = childOf(element?.element, "extLst");
    return cellText(
      place,
      {
        style,
        value: now.value,
        ...(formula && { formula: formula.text }),
        kept,
        keptInside: extras ? this.part.source.slice(extras.start, extras.end) : "",
      },
      this.x,
    );
  }

  private rowAttributes(row: number): Readonly<Record<string, string | undefined>> {
    const was = this.before.rows.get(row);
    const is = this.now.rows.get(row);
    return {
      ...(was?.sizePx !== is?.sizePx && {
        ht: is?.sizePx === undefined ? undefined : String(rowPoints(is.sizePx)),
        customHeight: is?.sizePx === undefined ? undefined : "1",
      }),
      ...((was?.isHidden ?? false) !== (is?.isHidden ?? false) && { hidden: is?.isHidden ? "1" : undefined }),
    };
  }

  /** The changed cells as splices of the rows that they are in. */
  rows(): { splices: Splice[]; touched: CellChange[] } {
    const direct = withoutOldPlainSpills(
      cellChanges(this.before, this.now),
      this.elements,
      this.now,
      this.before,
    );
    const orphans = orphanedChanges(this.cells, direct, this.before, this.now);
    const orphaned = new Set(orphans.map(({ row, column }) => key(row, column)));
    const changes = [...direct, ...orphans].sort((a, b) => a.row - b.row || a.column - b.column);
    const byRow = new Map<number, CellChange[]>();
    for (const change of changes) byRow.set(change.row, [...(byRow.get(change.row) ?? []), change]);
    for (const row of new Set([...this.before.rows.keys(), ...this.now.rows.keys()]))
      if (!byRow.has(row) && Object.keys(this.rowAttributes(row)).length > 0) byRow.set(row, []);

    const sheetData = childOf(this.part.root, "sheetData");
    const there = rowElements(sheetData);
    const splices: Splice[] = [];
    const appended: string[] = [];
    for (const [row, inRow] of [...byRow].sort(([a], [b]) => a - b)) {
      const found = there.find((each) => each.row === row);
      const texts = inRow.map((change) => ({
        change,
        text: this.newText(change, orphaned.has(key(change.row, change.column))),
      }));
      if (!found) {
        const inside = texts.map(({ text }) => text).join("");
        const attributes = this.rowAttributes(row);
        if (inside === "" && Object.keys(attributes).length === 0) continue;
        const text = `<${this.x}row${attributesText({ r: row + 1, ...attributes })}>${inside}</${this.x}row>`;
        const next = there.find((each) => each.row > row);
        if (next) splices.push({ start: next.element.start, end: next.element.start, text });
        else appended.push(text);
        continue;
      }
      splices.push(this.rowSplice(found.element, row, texts));
    }
    if (sheetData && (splices.length > 0 || appended.length > 0))
      return {
        splices: [changeElement(this.part.source, sheetData, { inside: splices, append: appended.join("") })],
        touched: changes,
      };
    return { splices: [], touched: changes };
  }

  private rowSplice(
    element: XmlElement,
    row: number,
    texts: readonly { change: CellChange; text: string }[],
  ): Splice {
    const cells = cellElements({ row, element });
    const inside: Splice[] = [];
    const appended: string[] = [];
    for (const { change, text } of texts) {
      const found = this.elements.get(key(change.row, change.column));
      const next = cells.find(({ column }) => column > change.column);
      if (found) inside.push({ start: found.element.start, end: found.element.end, text });
      else if (next) inside.push({ start: next.element.start, end: next.element.start, text });
      else appended.push(text);
    }
    return changeElement(this.part.source, element, {
      attributes: { ...this.rowAttributes(row), ...(texts.length > 0 && { spans: undefined }) },
      inside,
      append: appended.join(""),
    });
  }
}

/** Whether a formula was added, changed or taken away. */
const changesFormulas = (touched: readonly CellChange[]): boolean =>
  touched.some(({ before, now }) => before?.formula !== now?.formula);

export interface PatchedSheet {
  readonly splices: readonly Splice[];
  readonly changesFormulas: boolean;
}

/** What has to change in a sheet's part so that it holds the sheet as it is now. */
export const patchSheet = (
  part: XmlPart,
  before: BookSheet,
  now: BookSheet,
  tools: SheetTools,
): PatchedSheet => {
  const patch = new SheetPatch(part, before, now, tools);
  const { splices, touched } = patch.rows();
  const versions = { part, before, now, x: prefixOf(part.root) };
  return {
    splices: [
      ...splices,
      // In the order in which they stand in a sheet: several may be put in at the same place.
      ...frozenChanges(versions),
      ...columnsChanges(versions),
      ...mergesChanges(versions),
      ...validationChanges(versions),
      ...dimensionChanges(versions, touched),
      ...pageChanges(versions),
      ...protectionChanges(versions),
    ],
    changesFormulas: changesFormulas(touched),
  };
};
