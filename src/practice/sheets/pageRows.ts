import type { CellAddress } from "../../workbook/address";
import { text, type CellContent, type PlannedCell } from "../../workbook/plan";
import { CAUTIONS } from "../../sheets/safety";
import type { StyleName } from "../../workbook/styles";
import { wrapText } from "./wrapText";

/** Columns of a page in pixels: label, value, unit, format. Together they are a page wide. */
export const PAGE_COLUMNS = [250, 190, 80, 180];
/** Letters that fit across the page in the usual font size. */
export const PAGE_LETTERS = 92;

/** Fills a sheet from the top down, so that callers don't have to count rows. */
export class PageRows {
  readonly cells: PlannedCell[] = [];
  private next = 0;

  /** The row to be filled next. */
  get row(): number {
    return this.next;
  }

  skip(rows = 1): void {
    this.next += rows;
  }

  put(
    column: number,
    content: CellContent | null,
    style?: StyleName,
    more: Partial<PlannedCell> = {},
  ): CellAddress {
    const at = { row: this.next, column };
    this.cells.push({ ...at, content, ...(style && { style }), ...more });
    return at;
  }

  line(line: string, style: StyleName): void {
    this.put(0, text(line), style);
    this.skip();
  }

  /** Text wrapped to the page's width. */
  paragraph(paragraph: string, style: StyleName, letters = PAGE_LETTERS): void {
    for (const line of wrapText(paragraph, letters)) this.line(line, style);
  }

  headings(...headings: string[]): void {
    headings.forEach((each, column) => this.put(column, text(each), "heading"));
    this.skip();
  }

  cautions(): void {
    for (const caution of CAUTIONS) this.paragraph(caution, "caution");
  }
}
