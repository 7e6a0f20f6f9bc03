import { CellError, isMatrix, type Answer as AnswerValue, type Cell } from "../../shared/cell";

/** Shows four decimals, or four significant digits of a smaller number. The cell itself holds the full value. */
const readable = new Intl.NumberFormat("en-US", {
  useGrouping: false,
  // Never shows -0.
  signDisplay: "negative",
  maximumFractionDigits: 4,
  maximumSignificantDigits: 4,
  roundingPriority: "morePrecision",
});

const shown = (cell: Cell): string => {
  if (cell === null || cell === "") return "(empty text)";
  if (typeof cell === "number") return readable.format(cell);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "string" ? cell : cell.code;
};

/** The result of a function: a value with its unit, a table, or an error with its message. */
export const Answer = ({ answer, unit }: { answer: AnswerValue; unit: string }) => {
  if (answer instanceof CellError)
    return (
      <>
        <strong>{answer.code}</strong> {answer.message}
      </>
    );
  if (!isMatrix(answer))
    return (
      <>
        <strong>{shown(answer)}</strong>
        {typeof answer === "number" && ` ${unit}`}
      </>
    );
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label="Result table">
      <table>
        <tbody>
          {answer.map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) => (
                <td key={column} class={typeof cell === "number" ? "number" : undefined}>
                  {cell === "" ? "" : shown(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
