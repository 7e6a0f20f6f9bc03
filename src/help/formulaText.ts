import { isMatrix, type Argument, type Cell } from "../../shared/cell";
import type { FunctionSpec } from "../../shared/spec/spec";
import { qualifiedName } from "../workbook/namespace";
import { quotedText } from "../workbook/formula";

const literal = (cell: Cell): string => {
  if (cell === null) return "";
  if (typeof cell === "string") return quotedText(cell);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(cell) : cell.code;
};

const argumentText = (argument: Argument): string =>
  argument === undefined
    ? ""
    : isMatrix(argument)
      ? `{${argument.map((row) => row.map(literal).join(",")).join(";")}}`
      : literal(argument);

/** A formula as someone would type it into a cell: `=GABLE.COURSES("20 ft", 12)`. */
export const formulaText = (spec: FunctionSpec, args: readonly Argument[]): string =>
  `=${qualifiedName(spec)}(${args.map(argumentText).join(", ")})`;
