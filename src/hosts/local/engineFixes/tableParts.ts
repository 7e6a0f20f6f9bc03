import type { BookTable } from "../../../xlsx/book/book";
import { parseRange } from "../../../xlsx/book/cellAddress";
import type { Token } from "../../../workbook/formulas/tokens";

/**
 * The engine knows a table's headings and its data; it takes the last row of data for the totals. So each block of rows that a
 * formula may ask for stands as a table of its own, by a name that nobody can type, and formulas reach the engine with that name.
 * By the sections of a reference, in small letters; the signs are of Unicode's private use.
 */
const SUFFIXES: Readonly<Record<string, string>> = {
  "#all": "\ue002",
  "#totals": "\ue003",
  "#data,#totals": "\ue004",
  "#headers,#data": "\ue005",
  "#headers": "\ue006",
};

/** Rows of a table under a name of the engine's. */
export interface TablePart {
  readonly name: string;
  /** The row above the first, which the engine takes for the headings. */
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/** A table as the engine is to know it: its data under its own name, then the other blocks of its rows. */
export const tableParts = ({ name, range, hasHeadings, hasTotals }: BookTable): readonly TablePart[] => {
  const cells = parseRange(range);
  if (!cells) return [];
  const { from, to } = cells;
  const firstOfData = from.row + (hasHeadings ? 1 : 0);
  const lastOfData = to.row - (hasTotals ? 1 : 0);
  const part = (sections: string, first: number, last: number): TablePart => ({
    name: name + (SUFFIXES[sections] ?? ""),
    startRow: first - 1,
    endRow: last,
    startColumn: from.column,
    endColumn: to.column,
  });
  return [
    part("", firstOfData, lastOfData),
    part("#all", from.row, to.row),
    part("#data,#totals", firstOfData, to.row),
    ...(hasTotals ? [part("#totals", to.row, to.row)] : []),
    ...(hasHeadings
      ? [part("#headers,#data", from.row, lastOfData), part("#headers", from.row, from.row)]
      : []),
  ];
};

const ONE_SECTION = /^#[\p{L} ]+$/u;
const FIRST_SECTION = /^\[(#[\p{L} ]+)\]\s*,?\s*/u;

/** `[#Totals],[Feet]` as its sections and its columns. */
const sectionsOf = (inner: string): { readonly sections: string; readonly columns: string } => {
  if (ONE_SECTION.test(inner)) return { sections: inner.toLowerCase(), columns: "" };
  const sections: string[] = [];
  let columns = inner;
  for (let match = FIRST_SECTION.exec(columns); match; match = FIRST_SECTION.exec(columns)) {
    sections.push((match[1] ?? "").toLowerCase());
    columns = columns.slice(match[0].length);
  }
  return { sections: sections.join(), columns };
};

/** `@Feet` and `@[Feet]:[Inches]` as a file writes them. */
const ofThisRow = (columns: string): string => {
  if (columns === "") return "[#This Row]";
  return columns.startsWith("[") ? `[[#This Row],${columns}]` : `[[#This Row],[${columns}]]`;
};

/** What stands in a table's brackets, and what its name is to end in, so that the engine finds the rows that are meant. */
const forEngine = (brackets: string): { readonly suffix: string; readonly brackets: string } => {
  const inner = brackets.slice(1, -1).trim();
  if (inner.startsWith("@")) return { suffix: "", brackets: ofThisRow(inner.slice(1).trim()) };
  const { sections, columns } = sectionsOf(inner);
  const suffix = SUFFIXES[sections];
  return suffix === undefined
    ? { suffix: "", brackets }
    : { suffix, brackets: columns === "" ? "[#Data]" : `[${columns}]` };
};

/** A formula's references to tables, such as Bays[#Totals], as references to blocks of rows that the engine knows. */
export const withTableParts = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.kind === "bracket" && tokens[index - 1]?.kind === "word")
      return { ...token, text: forEngine(token.text).brackets };
    const next = tokens[index + 1];
    return token.kind === "word" && next?.kind === "bracket"
      ? { ...token, text: token.text + forEngine(next.text).suffix }
      : token;
  });
