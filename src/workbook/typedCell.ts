import type { Cell } from "../../shared/cell";

/** The value that a spreadsheet makes of typed input: blank, TRUE or FALSE, a number, or text. */
export const typedCell = (typed: string): Cell => {
  const trimmed = typed.trim();
  if (trimmed === "") return null;
  if (/^true$/i.test(trimmed)) return true;
  if (/^false$/i.test(trimmed)) return false;
  return /^[-+]?(?:\d+\.?\d*|\.\d+)$/.test(trimmed) ? Number(trimmed) : trimmed;
};
