import { CellError, type Cell } from "../../shared/cell";
import type { HeadlessEngine } from "../hosts/local/workbook/headless";

interface AnsweredLine {
  readonly json: string;
  /** FALSE: the line is no formula. */
  readonly parsed: boolean;
}

const errorObject = ({ code, message }: { code: string; message: string }) => ({ error: code, message });

const cellObject = (cell: Cell): unknown => (cell instanceof CellError ? errorObject(cell) : cell);

/** One line's answer as JSON: a value, a table as an array of rows, or an error with its sentence. A blank line is blank. */
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
        json: JSON.stringify({ error: "#PARSE!", message: `this is no formula: ${line.trim()}` }),
        parsed: false,
      };
  }
};
