import { a1, areaAddress, type CellAddress } from "../../workbook/address";
import { needsApostrophe } from "../../workbook/needsApostrophe";
import { needsArrayFormula } from "../formulas/needsArrayFormula";
import { fileStyleIndex, type Book, type BookCell, type BookSheet } from "../book/book";
import { cellText, formulaText } from "./cellText";
import type { CellChange } from "./cellChanges";
import { changeElement } from "../xml/elementOrder";
import { storedFormula } from "../formulas/storedFormula";
import { spillArea } from "./legacySpills";
import { addressKey, sharedNumber, type CellElement } from "../read/sheetCells";
import type { StylesDraft } from "../styles/stylesDraft";
import { childOf, numberAttribute, type XmlPart } from "../xml/xml";
import { attributesText } from "../xml/xmlText";

/** What writing a sheet needs from the rest of the package. */
export interface SheetTools {
  readonly stylesDraft: StylesDraft;
  readonly styles: Book["styles"];
  /** The cell metadata index of a dynamic array formula. */
  readonly dynamicArrayMark: () => string;
}

/** Writes the changed cells of a sheet, each as the text of its element. */
export class CellWriter {
  constructor(
    private readonly part: XmlPart,
    private readonly before: BookSheet,
    private readonly tools: SheetTools,
    /** The prefix of the part's elements. */
    private readonly x: string,
    private readonly elements: ReadonlyMap<string, CellElement>,
  ) {}

  private styleOf({ row, column, before, now: cell }: CellChange, element: CellElement | undefined): number {
    const text =
      typeof cell?.value === "string" && cell.formula === undefined && !cell.isSpilled ? cell.value : "";
    const isQuoted = text !== "" && needsApostrophe(text);
    const inFile = numberAttribute(element?.element, "s");
    // A new cell in a styled row or column takes that style.
    const line = this.before.rows.get(row)?.style ?? this.before.columns.get(column)?.style;
    // The cell's style moved away with its row or column; the cell that is here now doesn't take it.
    const hasLostStyle = before?.style !== undefined && cell?.style === undefined;
    const base = (hasLostStyle ? undefined : inFile) ?? fileStyleIndex(line);
    const own = fileStyleIndex(cell?.style);
    if (own !== undefined || cell?.style === undefined)
      return this.tools.stylesDraft.indexOf(undefined, own ?? base ?? 0, isQuoted);
    return this.tools.stylesDraft.indexOf(this.tools.styles.get(cell.style), base, isQuoted);
  }

  private formulaElement(
    place: CellAddress,
    cell: BookCell,
    element: CellElement | undefined,
    isKept: boolean,
  ): { text: string; isDynamic: boolean } | undefined {
    if (cell.formula === undefined) return undefined;
    const old = childOf(element?.element, "f");
    if (isKept && old && sharedNumber({ ...place, element: old }) === undefined) {
      const { source } = this.part;
      const ref = old.attributes.get("t") === "array" ? this.arrayRange(place, cell) : undefined;
      const wasRef = old.attributes.get("ref");
      const text =
        ref === undefined || wasRef === ref || !cell.spill
          ? source.slice(old.start, old.end)
          : changeElement(source, old, { attributes: { ref } }).text;
      return { text, isDynamic: false };
    }
    const isDynamic = cell.spill !== undefined || needsArrayFormula(cell.formula);
    return {
      text: formulaText(
        storedFormula(cell.formula),
        isDynamic ? this.arrayRange(place, cell) : undefined,
        this.x,
      ),
      isDynamic,
    };
  }

  private arrayRange(place: CellAddress, cell: BookCell): string {
    const { rows, columns } = spillArea(place, cell);
    return areaAddress({
      from: place,
      to: { row: place.row + rows - 1, column: place.column + columns - 1 },
    });
  }

  /** The new text of a cell; empty where the cell is gone. */
  write(change: CellChange, isOrphan: boolean): string {
    const { row, column, before, now } = change;
    const place = { row, column };
    const element = this.elements.get(addressKey(place));
    const isKept = !isOrphan && before?.formula === now?.formula;
    const style = this.styleOf(change, element);
    const formula = now && this.formulaElement(place, now, element, isKept);
    if (now === undefined || (now.value === null && formula === undefined)) {
      if (style === 0) return "";
      return `<${this.x}c${attributesText({ r: a1(place), s: style })}/>`;
    }
    const metadata = element?.element.attributes.get("cm");
    const kept: Record<string, string> = {};
    if (isKept && formula && metadata !== undefined) kept["cm"] = metadata;
    if (formula?.isDynamic) kept["cm"] = this.tools.dynamicArrayMark();
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
}
