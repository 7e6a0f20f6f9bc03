import { InputError } from "../../../shared/inputError";
import { a1, a1Range, type Area, type CellAddress } from "../../workbook/address";
import { formulaAt, valueAt } from "../../workbook/contents";
import { isEmpty, quotedText } from "../../workbook/formula";
import { formula, number, text, type PlannedCell } from "../../workbook/plan";
import { editedWarningFormula, sealFormula, currentSeal, type SealedBlock } from "../sealedBlock";
import {
  amountValue,
  amountReference,
  missingLabel,
  amountAddress,
  rowOf,
  type ExistingChangeOrder,
} from "./existingChangeOrders";
import {
  AMOUNTS,
  amountRow,
  CHANGE_COLUMNS,
  CHANGE_HEADINGS,
  CHECK_ROW,
  FIRST_LINE_ROW,
  SEALS,
  STATUS_ROW,
  type Amount,
} from "./changeOrderLayout";
import type { ComparedOrder } from "./comparedOrders";

const SEAL_FORMAT = "0";
/** The label by which a change order's own seal is found. */
const OWN = "This change order";
const NOTES = [
  "Then: signed sheets and previous change orders when this was made, this one when it was issued. Now: their current seals.",
  "A change order's seal covers its lines up to Tax, its terms and its amounts. Reasons, initials, words and signatures stay free.",
];

const LAST_AMOUNT = Object.keys(AMOUNTS).at(-1) as Amount;

/** The sealed figures of a change order: from the headings of its lines down to its last amount. */
const figures = (headingRow: number, lastRow: number): Area => ({
  from: { row: headingRow, column: CHANGE_COLUMNS.item },
  to: { row: lastRow, column: CHANGE_COLUMNS.tax },
});

const figuresOf = (change: ExistingChangeOrder): Area =>
  figures(
    rowOf(change.contents, CHANGE_COLUMNS.item, CHANGE_HEADINGS.item),
    amountAddress(change, LAST_AMOUNT).row,
  );

/** The cell for the seal of an issued change order; undefined where there is no such row. */
export const issueSealAddress = ({
  contents,
}: Pick<ExistingChangeOrder, "contents">): CellAddress | undefined => {
  // An item may have the same name; the lines and causes are above.
  const row = contents.cells.findLastIndex((line) => line[SEALS.of] === OWN);
  return row < 0 ? undefined : { row, column: SEALS.then };
};

/** The seal under which a change order was issued; undefined if it isn't issued. */
export const issueSeal = (change: Pick<ExistingChangeOrder, "contents">): number | undefined => {
  const place = issueSealAddress(change);
  const seal = place && valueAt(change.contents, place);
  return typeof seal === "number" ? seal : undefined;
};

/** A change order with the seal of its figures. Refuses one without a total, and one that was edited since it was issued. */
export const sealedFigures = (change: ExistingChangeOrder): SealedBlock => {
  const { sheet, contents } = change;
  const lost = missingLabel(change);
  if (lost !== undefined)
    throw new InputError(
      `"${sheet}" has no "${lost}" any more, by which its figures are found: write it again. Nothing was written.`,
    );
  const area = figuresOf(change);
  const seal = currentSeal(contents, area);
  if (formulaAt(contents, { row: CHECK_ROW, column: 0 }) === "")
    throw new InputError(
      `"${sheet}" has no check in ${a1({ row: CHECK_ROW, column: 0 })} any more: undo its deletion, or make the change order again. Nothing was written.`,
    );
  if (typeof amountValue(change, "total") !== "number" || seal === undefined) {
    const check = valueAt(contents, { row: CHECK_ROW, column: 0 });
    throw new InputError(
      `"${sheet}" has no total${typeof check === "string" && check !== "" ? `: ${check}` : ""}. Nothing was written.`,
    );
  }
  const issued = issueSeal(change);
  if (issued !== undefined && issued !== seal)
    throw new InputError(
      `"${sheet}" is not as it was issued: its seal doesn't fit its figures any more. Nothing was written.`,
    );
  return { sheet, area, seal };
};

/** The signed sheets among two sides. */
export const sealedBlocksOf = (sides: readonly ComparedOrder[]): SealedBlock[] =>
  sides.flatMap(({ sealed }) => sealed ?? []);

const thenAndNow = (row: number): [then: string, now: string] => [
  a1({ row, column: SEALS.then }),
  a1({ row, column: SEALS.now }),
];

/** Blank where the seal in a row is unchanged, otherwise a warning that its sheet was edited. */
export const editedWarning = (row: number, sheet: string, since: string): string =>
  editedWarningFormula(...thenAndNow(row), sheet, since);

/** A formula while the seals in some rows are unchanged; #N/A where one isn't. */
export const unlessEdited = (firstRow: number, rows: number, then: string): string => {
  if (rows === 0) return then;
  const of = (column: number): string =>
    a1Range({ row: firstRow, column }, { row: firstRow + rows - 1, column });
  return `IF(SUMPRODUCT((${of(SEALS.then)}<>${of(SEALS.now)})*1)=0,${then},NA())`;
};

/**
 * The statuses of previous change orders. They are beside the seals and not in the check, because a formula has a maximum length
 * and a contract any number of changes.
 */
export const statusColumn = (firstRow: number, rows: number): string =>
  a1Range({ row: firstRow, column: SEALS.status }, { row: firstRow + rows - 1, column: SEALS.status });

/** Whether a previous change order has a total and is unedited: its total is added up here. */
const statusOf = (previous: ExistingChangeOrder, row: number): PlannedCell => {
  const edited = editedWarning(row, previous.sheet, "this was made: undo that, or make this one again");
  const noTotal = quotedText(`"${previous.sheet}" has no total`);
  return {
    row,
    column: SEALS.status,
    content: formula(`=IF(ISNUMBER(${amountReference(previous, "total")}),${edited},${noTotal})`),
    style: "caution",
  };
};

/** The row of the first seal, below the section's title and its notes. */
export const firstSealRow = (sectionRow: number): number => sectionRow + 1 + NOTES.length;

const sealRow = (row: number, of: string, then: number | undefined, now: string): PlannedCell[] => [
  { row, column: SEALS.of, content: text(of), style: "label" },
  {
    row,
    column: SEALS.then,
    content: then === undefined ? null : number(then),
    style: "result",
    numberFormat: SEAL_FORMAT,
  },
  { row, column: SEALS.now, content: formula(`=${now}`), style: "result", numberFormat: SEAL_FORMAT },
];

/** The change order's own seal, blank until it is issued, and above the lines whether it fits. */
const ownSeal = (row: number, sheet: string, lines: number): PlannedCell[] => {
  const area = figures(FIRST_LINE_ROW - 1, amountRow(lines, LAST_AMOUNT));
  const [then, now] = thenAndNow(row);
  // An edit may leave it without a total: then its figures have no seal.
  const lost = quotedText(`"${sheet}" isn't as it was issued: figures of it aren't available any more`);
  const edited = editedWarning(row, sheet, "it was issued: its seal doesn't fit its figures any more");
  return [
    ...sealRow(row, OWN, undefined, sealFormula({ sheet, area })),
    {
      row: STATUS_ROW,
      column: 0,
      content: formula(`=IF(${isEmpty(then)},"",IF(ISNA(${now}),${lost},${edited}))`),
      style: "caution",
    },
  ];
};

interface SealSection {
  readonly sectionRow: number;
  readonly sheet: string;
  readonly lines: number;
  readonly signed: readonly SealedBlock[];
  readonly previous: readonly ExistingChangeOrder[];
  /** What still moves is issued under no seal. */
  readonly isDraft: boolean;
}

/** The seals of the compared orders and previous change orders, and the change order's own. */
export const sealCells = (section: SealSection): PlannedCell[] => {
  const { sectionRow, sheet, lines, signed, previous, isDraft } = section;
  const first = firstSealRow(sectionRow);
  const behind = [...signed, ...previous.map(sealedFigures)];
  return [
    { row: sectionRow, column: SEALS.of, content: text("Seals"), style: "section" },
    { row: sectionRow, column: SEALS.then, content: text("then"), style: "note" },
    { row: sectionRow, column: SEALS.now, content: text("now"), style: "note" },
    ...NOTES.map((note, index): PlannedCell => ({
      row: sectionRow + 1 + index,
      column: SEALS.of,
      content: text(note),
      style: "note",
    })),
    ...behind.flatMap((block, index) => sealRow(first + index, block.sheet, block.seal, sealFormula(block))),
    ...previous.map((each, index) => statusOf(each, first + signed.length + index)),
    ...(isDraft ? [] : ownSeal(first + behind.length, sheet, lines)),
  ];
};
