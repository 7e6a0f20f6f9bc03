import { text, type PlannedCell } from "../../workbook/plan";

/** A section's title, and its column headings below. */
export const sectionHead = (firstRow: number, title: string, headings: readonly string[]): PlannedCell[] => [
  { row: firstRow - 2, column: 0, content: text(title), style: "section" },
  ...headings.map((heading, column): PlannedCell => ({
    row: firstRow - 1,
    column,
    content: text(heading),
    style: "heading",
  })),
];

/** `count` row numbers from `first` on. */
export const rowsFrom = (first: number, count: number): number[] =>
  Array.from({ length: count }, (_, index) => first + index);
