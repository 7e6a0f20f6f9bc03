import { CellError, type Cell } from "./cell";

const LONGEST_QUOTE = 40;

/** What came, as a person would recognize it: text in quotes, cut short where it is long. */
export const describeCell = (cell: Cell): string => {
  if (cell === null) return "a blank cell";
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return String(cell);
  return cell.length > LONGEST_QUOTE ? `"${cell.slice(0, LONGEST_QUOTE)}…"` : `"${cell}"`;
};

/** `1 row`, `2 rows`. */
export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`;
