import { counted } from "../../../shared/describe";
import type { Area } from "../../workbook/address";
import { patchArea, type CellPatch } from "../../workbook/patch";
import type { Block } from "./block";
import { guessColumns, type ColumnGuess } from "./guessColumns";
import type { MappedColumn } from "./rowExpressions";
import { nextFreeAddress, obstacleIn } from "./freeSpace";
import type { Survey } from "../../workbook/survey";
import { UNITS, type UnitName } from "./unit";
import { usualUnit } from "./meanings";

/** What each column of the block probably means, before the user has confirmed it. */
export const guessBlock = ({ headings, data }: Block): ColumnGuess[] => guessColumns(headings, data);

/** The columns that have a meaning. */
export const mappedColumns = (
  { headings, firstColumn }: Block,
  guesses: readonly ColumnGuess[],
): MappedColumn[] =>
  guesses.flatMap(({ meaning, unit }, index): MappedColumn[] =>
    meaning === undefined
      ? []
      : [{ column: firstColumn + index, heading: headings[index] ?? "", meaning, unit }],
  );

const isConverted = ({ meaning, unit }: MappedColumn): boolean => unit !== usualUnit(meaning);

const unitLabel = (unit: UnitName): string => UNITS[unit].label;

/** A number stored as text is read in the function's usual unit, whatever the heading says. */
const bareTextNotes = (block: Block, columns: readonly MappedColumn[]): string[] =>
  columns.filter(isConverted).flatMap(({ column, heading, meaning, unit }) => {
    const [text] = block.data[column - block.firstColumn]?.bareTexts ?? [];
    return text === undefined
      ? []
      : [
          `"${heading}" holds ${text} as text: it will be read in ${unitLabel(usualUnit(meaning))}, not in ${unitLabel(unit)}.`,
        ];
  });

const hiddenRowNotes = ({ hiddenRows }: Survey, { firstRow, lastRow }: Block): string[] => {
  const hidden = hiddenRows.filter((row) => row >= firstRow && row <= lastRow).length;
  return hidden === 0
    ? []
    : [
        `${counted(hidden, "row")} of the block ${hidden === 1 ? "is" : "are"} hidden and will be filled too.`,
      ];
};

/** What the user should know before anything is written. */
export const notesFor = (survey: Survey, block: Block, columns: readonly MappedColumn[]): string[] => [
  ...hiddenRowNotes(survey, block),
  ...bareTextNotes(block, columns),
];

/** Where a patch would be written, what is in the way, and the next column where it fits. */
export interface Placement {
  readonly area: Area;
  readonly obstacle?: string;
  readonly freeColumn?: number;
}

export const placementOf = (survey: Survey, patch: CellPatch): Placement => {
  const area = patchArea(patch);
  const obstacle = obstacleIn(survey, area);
  if (obstacle === undefined) return { area };
  const free = nextFreeAddress(survey, area);
  return { area, obstacle, ...(free && { freeColumn: free.column }) };
};
