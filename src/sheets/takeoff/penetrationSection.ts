import { a1, a1Range } from "../../workbook/address";
import { text, value, type PlannedCell } from "../../workbook/plan";
import type { TakeoffLayout } from "./takeoffLayout";
import type { PenetrationInput } from "./takeoffOptions";
import { rowsFrom, sectionHead } from "./sectionHead";

/** Columns of the table of chimneys and pipes. */
const PENETRATION_COLUMNS = { name: 0, kind: 1, width: 2, depth: 3, pitch: 4 } as const;
const HEADINGS = ["Name", "Chimney or pipe", "Width (ft)", "Depth, level (ft)", "Pitch"];
const KINDS: readonly PenetrationInput["kind"][] = ["chimney", "pipe"];

export const penetrationCell = (row: number, column: keyof typeof PENETRATION_COLUMNS): string =>
  a1({ row, column: PENETRATION_COLUMNS[column] });

/** A column of the table. */
export const penetrationColumn = (layout: TakeoffLayout, column: keyof typeof PENETRATION_COLUMNS): string =>
  a1Range(
    { row: layout.penetrations, column: PENETRATION_COLUMNS[column] },
    { row: layout.penetrations + layout.penetrationRows - 1, column: PENETRATION_COLUMNS[column] },
  );

const inputsOf = (penetration: PenetrationInput | undefined): readonly (number | string | undefined)[] => {
  if (!penetration) return HEADINGS.map(() => undefined);
  const measures =
    penetration.kind === "chimney"
      ? [penetration.width, penetration.depth, penetration.pitch]
      : [undefined, undefined, undefined];
  return [penetration.name, penetration.kind, ...measures];
};

/** Section 3: chimneys and pipes. */
export const penetrationSection = (
  layout: TakeoffLayout,
  penetrations: readonly PenetrationInput[],
): PlannedCell[] => [
  ...sectionHead(layout.penetrations, "3  Chimneys and pipes", HEADINGS),
  {
    row: layout.penetrations,
    column: HEADINGS.length,
    content: text("front and back are as wide as the chimney; add what wraps around the corners"),
    style: "note",
  },
  ...rowsFrom(layout.penetrations, layout.penetrationRows).flatMap((row, index) =>
    inputsOf(penetrations[index]).map((typed, column): PlannedCell => ({
      row,
      column,
      content: typed === undefined ? null : typeof typed === "string" ? text(typed) : value(typed),
      style: "input",
      ...(column === PENETRATION_COLUMNS.kind && { choices: KINDS }),
    })),
  ),
];
