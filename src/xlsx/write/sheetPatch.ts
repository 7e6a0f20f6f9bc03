import type { BookSheet } from "../book/book";
import { CellWriter, type SheetTools } from "./cellWriter";
import { cellChanges, type CellChange } from "./cellChanges";
import { changeElement, prefixOf } from "../xml/elementOrder";
import { withoutLegacySpills } from "./legacySpills";
import { orphanedChanges } from "./sharedFormulas";
import { allCellElements, cellElements, addressKey, rowElements, type CellElement } from "../read/sheetCells";
import { columnChanges } from "./columnChanges";
import { pageSetupChanges } from "./pageSetupChanges";
import { dimensionChanges, frozenChanges, mergesChanges, protectionChanges } from "./sheetFrame";
import { validationChanges } from "./validationChanges";
import { rowPoints } from "../styles/sizes";
import type { Splice } from "../xml/splices";
import { childOf, type XmlElement, type XmlPart } from "../xml/xml";
import { attributesText } from "../xml/xmlText";

class SheetPatch {
  private readonly x: string;
  private readonly cells: readonly CellElement[];
  private readonly elements: ReadonlyMap<string, CellElement>;
  private readonly writer: CellWriter;

  constructor(
    private readonly part: XmlPart,
    private readonly before: BookSheet,
    private readonly now: BookSheet,
    tools: SheetTools,
  ) {
    this.x = prefixOf(part.root);
    this.cells = allCellElements(part.root);
    this.elements = new Map(this.cells.map((cell) => [addressKey(cell), cell]));
    this.writer = new CellWriter(part, before, tools, this.x, this.elements);
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

  /** The changed cells as splices of their rows. */
  rows(): { splices: Splice[]; touched: CellChange[] } {
    const direct = withoutLegacySpills(
      cellChanges(this.before, this.now),
      this.elements,
      this.now,
      this.before,
    );
    const orphans = orphanedChanges(this.cells, direct, this.before, this.now);
    const orphaned = new Set(orphans.map(addressKey));
    const changes = [...direct, ...orphans].sort((a, b) => a.row - b.row || a.column - b.column);
    const byRow = new Map<number, CellChange[]>();
    for (const change of changes) byRow.set(change.row, [...(byRow.get(change.row) ?? []), change]);
    for (const row of new Set([...this.before.rows.keys(), ...this.now.rows.keys()]))
      if (!byRow.has(row) && Object.keys(this.rowAttributes(row)).length > 0) byRow.set(row, []);

    const sheetData = childOf(this.part.root, "sheetData");
    const there = rowElements(sheetData);
    const byNumber = new Map(there.map((each) => [each.row, each]));
    const splices: Splice[] = [];
    const appended: string[] = [];
    for (const [row, inRow] of [...byRow].sort(([a], [b]) => a - b)) {
      const found = byNumber.get(row);
      const texts = inRow.map((change) => ({
        change,
        text: this.writer.write(change, orphaned.has(addressKey(change))),
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
      const found = this.elements.get(addressKey(change));
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

/** Whether a formula was added, changed or removed. */
const changesFormulas = (touched: readonly CellChange[]): boolean =>
  touched.some(({ before, now }) => before?.formula !== now?.formula);

export interface PatchedSheet {
  readonly splices: readonly Splice[];
  readonly changesFormulas: boolean;
}

/** The changes that bring a worksheet part up to date with the sheet. */
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
      // In the order of the elements in a sheet: several may be inserted at the same position.
      ...frozenChanges(versions),
      ...columnChanges(versions),
      ...mergesChanges(versions),
      ...validationChanges(versions),
      ...dimensionChanges(versions, touched),
      ...pageSetupChanges(versions),
      ...protectionChanges(versions),
    ],
    changesFormulas: changesFormulas(touched),
  };
};
