import type { CellAddress } from "../../workbook/address";
import { text, type CellContent, type PlannedCell } from "../../workbook/plan";
import { CAUTIONS } from "../../sheets/safety";
import type { StyleName } from "../../workbook/styles";
import { wrapWords } from "./wrapWords";

/** Columns of a page: label, value, unit, form. Together they are as wide as a page. */
export const PAGE_COLUMNS = [250, 190, 80, 180];
/** Letters that fit into the page's width, in the usual size. */
export const PAGE_LETTERS = 92;

/** Rows that are filled from above; who fills them needn't count. */
export class PaperRows {
  readonly cells: PlannedCell[] = [];
  private next = 0;

  /** The row that comes next. */
  get row(): number {
    return this.next;
  }

  /** Goes to the next row, or some rows further. */
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

  line(words: string, style: StyleName): void {
    this.put(0, text(words), style);
    this.skip();
  }

  /** Sentences over the page's width. */
  lines(sentences: string, style: StyleName, letters = PAGE_LETTERS): void {
    for (const each of wrapWords(sentences, letters)) this.line(each, style);
  }

  headings(...words: string[]): void {
    words.forEach((each, column) => this.put(column, text(each), "heading"));
    this.skip();
  }

  cautions(): void {
    for (const caution of CAUTIONS) this.lines(caution, "caution");
  }
}
