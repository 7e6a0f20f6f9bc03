import type { BookTable } from "../../../xlsx/book/book";
import { parseRange } from "../../../xlsx/book/a1References";
import type { Token } from "../../../workbook/formulas/tokens";

/**
 * The engine knows only a table's headings and data, and takes the last row of data for the totals. So each section that a structured
 * reference may name is registered as a table of its own, under a name that nobody can type, and formulas reach the engine with that
 * name. Keys: the sections of a reference in lower case. Values: private-use characters added to the table's name.
 */
const NAME_SUFFIXES: Readonly<Record<string, string>> = {
  "#all": "\ue002",
  "#totals": "\ue003",
  "#data,#totals": "\ue004",
  "#headers,#data": "\ue005",
  "#headers": "\ue006",
};

/** A section of a table, under the name that the engine knows it by. */
export interface TablePart {
  readonly name: string;
  /** The row above the section: the engine treats it as the headings. */
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/** The tables to register for one table of a file: its data under its own name, then its other sections. */
export const tableParts = ({ name, range, hasHeadings, hasTotals }: BookTable): readonly TablePart[] => {
  const cells = parseRange(range);
  if (!cells) return [];
  const { from, to } = cells;
  const firstOfData = from.row + (hasHeadings ? 1 : 0);
  const lastOfData = to.row - (hasTotals ? 1 : 0);
  const part = (sections: string, first: number, last: number): TablePart => ({
    name: name + (NAME_SUFFIXES[sections] ?? ""),
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

/** Splits `[#Totals],[Feet]` into its sections and its columns. */
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

/** `@Feet` and `@[Feet]:[Inches]` in the long form that a file uses. */
const thisRowReference = (columns: string): string => {
  if (columns === "") return "[#This Row]";
  return columns.startsWith("[") ? `[[#This Row],${columns}]` : `[[#This Row],[${columns}]]`;
};

/** The suffix of the table's name, and the brackets after it, that make the engine find the rows of a structured reference. */
const forEngine = (brackets: string): { readonly suffix: string; readonly brackets: string } => {
  const inner = brackets.slice(1, -1).trim();
  if (inner.startsWith("@")) return { suffix: "", brackets: thisRowReference(inner.slice(1).trim()) };
  const { sections, columns } = sectionsOf(inner);
  const suffix = NAME_SUFFIXES[sections];
  return suffix === undefined
    ? { suffix: "", brackets }
    : { suffix, brackets: columns === "" ? "[#Data]" : `[${columns}]` };
};

/** Rewrites a formula's structured references, such as Bays[#Totals], to the tables that the engine knows. */
export const withTableParts = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.kind === "bracket" && tokens[index - 1]?.kind === "word")
      return { ...token, text: forEngine(token.text).brackets };
    const next = tokens[index + 1];
    return token.kind === "word" && next?.kind === "bracket"
      ? { ...token, text: token.text + forEngine(next.text).suffix }
      : token;
  });
