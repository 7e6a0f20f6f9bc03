import { CellError, isMatrix, type Answer as AnswerValue, type Cell } from "../../shared/cell";

/** What a person can use of a number: four decimals, or four digits where it is smaller. The cell holds all of it. */
const readable = new Intl.NumberFormat("en-US", {
  useGrouping: false,
  // There is no -0 on a tape.
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

/** What a function answers: a value with its unit, a table, or an error with its sentence. */
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
    <div class="scroll" tabIndex={0} role="region" aria-label="Result, a table">
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
