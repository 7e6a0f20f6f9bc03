import { CellError, type Cell } from "../../shared/cell";
import type { HeadlessEngine } from "../hosts/local/workbook/headless";

interface AnsweredLine {
  readonly json: string;
  /** false if the line isn't a formula. */
  readonly parsed: boolean;
}

const errorObject = ({ code, message }: { code: string; message: string }) => ({ error: code, message });

const cellObject = (cell: Cell): unknown => (cell instanceof CellError ? errorObject(cell) : cell);

/** The answer to one line as JSON: a value, a table as an array of rows, or an error with its message. A blank line gives empty text. */
export const answerLine = async (
  engine: Pick<HeadlessEngine, "evaluate">,
  line: string,
): Promise<AnsweredLine> => {
  if (line.trim() === "") return { json: '""', parsed: true };
  const evaluation = await engine.evaluate(line);
  switch (evaluation.kind) {
    case "value":
      return { json: JSON.stringify(evaluation.value ?? ""), parsed: true };
    case "table":
      return { json: JSON.stringify(evaluation.table.map((row) => row.map(cellObject))), parsed: true };
    case "error":
      return { json: JSON.stringify(errorObject(evaluation)), parsed: true };
    case "unparsable":
      return {
        json: JSON.stringify({ error: "#PARSE!", message: `this isn't a formula: ${line.trim()}` }),
        parsed: false,
      };
  }
};
