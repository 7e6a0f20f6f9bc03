import type { Cell } from "../../shared/cell";
import { rowsOf, type BidWorkbook } from "./bid";

/** What a change order says of why each item moved, a sentence each; equal ones stand there once, below the names of their items. */
export const causesOn = async (
  bid: Pick<BidWorkbook, "host">,
  sheet: string,
): Promise<Record<string, string[]>> => {
  const rows = await rowsOf(bid, sheet);
  const titles = ["Why it moved", "Seals"].map((title) => rows.findIndex(([first]) => first === title));
  const textOf = (cell: Cell | undefined): string => String(cell ?? "");
  const causes: Record<string, string[]> = {};
  let items: string[] = [];
  for (const [label, sentence] of rows.slice((titles[0] ?? 0) + 1, titles[1])) {
    const named = textOf(label);
    if (named !== "") items = named.replace(/^each of /, "").split(", ");
    if (textOf(sentence) !== "") for (const item of items) (causes[item] ??= []).push(textOf(sentence));
  }
  return causes;
};
