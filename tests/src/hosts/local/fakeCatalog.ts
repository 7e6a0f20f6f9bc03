import { CellError, isMatrix, type Argument, type Cell } from "../../../../shared/cell";
import type { CustomFunction } from "../../../../src/hosts/local/formulas/customFunction";

const parameter = (name: string, optional = false) => ({
  name,
  summary: `the ${name}`,
  optional,
  example: "1",
});

const show = (argument: Argument): string => {
  if (argument === undefined) return "omitted";
  if (argument === null) return "blank";
  if (argument instanceof CellError) return `error ${argument.code} ${argument.message}`;
  if (isMatrix(argument)) return `[${argument.map((row) => row.map(show).join(",")).join(";")}]`;
  return `${typeof argument} ${argument}`;
};

/** Functions that return a number, a text that describes the arguments, a spilling table with an error inside, and an error with a message. */
export const fakeCatalog: readonly CustomFunction[] = [
  {
    id: "DOUBLE",
    summary: "Twice a number.",
    parameters: [parameter("value"), parameter("extra", true)],
    call: (value, extra) => {
      if (value instanceof CellError) return value;
      if (value === null) return "";
      if (typeof value !== "number")
        return new CellError("#VALUE!", `value must be a number, got ${show(value)}`);
      if (value < 0) return new CellError("#VALUE!", `value must be 0 or more, got ${value}`);
      return value * 2 + (typeof extra === "number" ? extra : 0);
    },
  },
  {
    id: "SHOW",
    summary: "What came in.",
    parameters: ["a", "b", "c"].map((name) => parameter(name, true)),
    call: (...args) => args.map(show).join(" | "),
  },
  {
    id: "COURSES",
    summary: "A table that spills.",
    parameters: [parameter("rows")],
    call: (rows) => {
      if (rows instanceof CellError) return rows;
      if (typeof rows !== "number") return new CellError("#VALUE!", "rows must be a number");
      return Array.from({ length: rows }, (_, row): Cell[] => [
        row + 1,
        row === 1 ? new CellError("#N/A", "row 2 has no answer") : `course ${row + 1}`,
        row === 2 ? null : "",
      ]);
    },
  },
  {
    id: "NOSTOCK",
    summary: "Never has an answer.",
    parameters: [],
    call: () => new CellError("#N/A", "no stock is long enough"),
  },
];
