import { CellError, isBlank, type Cell, type Matrix } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { isoDate } from "../../../shared/sheetDate";
import type { Contents } from "../contents";
import { LEDGER, LEDGER_HEADINGS } from "./ledger";

const amount = (cell: Cell, where: string): string => {
  if (isBlank(cell) || cell === 0) return "";
  if (typeof cell === "number") return cell.toFixed(2);
  throw new InputError(
    `${where} is no amount${cell instanceof CellError ? ` (${cell.code})` : ""}. Nothing was saved.`,
  );
};

const words = (cell: Cell): string => (isBlank(cell) || cell instanceof CellError ? "" : String(cell));

/** The lines of a ledger sheet as other programs take them: dates by ISO 8601, amounts with two decimals. */
export const ledgerTable = ({ sheets }: Contents, name: string): Matrix => {
  const cells = sheets.get(name)?.cells ?? [];
  const head = cells.findIndex((line) =>
    LEDGER_HEADINGS.every((heading, column) => line[column] === heading),
  );
  if (head < 0) throw new InputError(`"${name}" has no ledger lines. Nothing was saved.`);
  const lines = cells.slice(head + 1);
  const end = lines.findIndex((line) => isBlank(line[LEDGER.account]));
  return [
    LEDGER_HEADINGS,
    ...lines.slice(0, end < 0 ? lines.length : end).map((line, index): Cell[] => {
      const at = (column: keyof typeof LEDGER): Cell => line[LEDGER[column]] ?? null;
      const where = `Row ${head + index + 2} of "${name}"`;
      const date = at("date");
      return [
        typeof date === "number" ? isoDate(date) : words(date),
        words(at("account")),
        words(at("memo")),
        amount(at("debit"), where),
        amount(at("credit"), where),
      ];
    }),
  ];
};
