import type { Cell } from "../../shared/cell";

/** What a spreadsheet would make of what a person types into a cell: nothing, TRUE or FALSE, a number, or text. */
export const typedCell = (typed: string): Cell => {
  const trimmed = typed.trim();
  if (trimmed === "") return null;
  if (/^true$/i.test(trimmed)) return true;
  if (/^false$/i.test(trimmed)) return false;
  return /^[-+]?(?:\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : trimmed;
};
