import * as library from "@formulajs/formulajs";

type Value = number | string | boolean;
/** The value of a formula for its arguments, which it calls a, b, c... */
export type Calculation = (args: readonly Value[]) => Value;

const TOKEN = /\d+(?:\.\d+)?(?:E-?\d+)?|[A-Z]+(?=\()|[a-g]|>=|[-+*/^();]/gy;

const FUNCTIONS = library as unknown as Readonly<Record<string, (...values: Value[]) => Value>>;

const OPERATORS: readonly Readonly<Record<string, (left: number, right: number) => Value>>[] = [
  { ">=": (left, right) => left >= right },
  { "+": (left, right) => left + right, "-": (left, right) => left - right },
  { "*": (left, right) => left * right, "/": (left, right) => left / right },
  { "^": (left, right) => left ** right },
];

/**
 * A formula as a closure. It calls a spreadsheet-function library for functions and JavaScript for operators, which the library
 * doesn't have. So neither side is charged for parsing a formula.
 */
export const libraryFormula = (formula: string): Calculation => {
  const tokens = formula.match(TOKEN) ?? [];
  if (tokens.join("") !== formula) throw new Error(`can't read ${formula}`);
  let next = 0;
  const operation = (level: number): Calculation => {
    if (level === OPERATORS.length) return operand();
    let left = operation(level + 1);
    for (;;) {
      const sign = OPERATORS[level]?.[tokens[next] ?? ""];
      if (!sign) return left;
      next += 1;
      const [before, after] = [left, operation(level + 1)];
      left = (args) => sign(before(args) as number, after(args) as number);
    }
  };
  const operand = (): Calculation => {
    const token = tokens[next++] ?? "";
    if (token === "(") {
      const inner = operation(0);
      next += 1;
      return inner;
    }
    if (/^[a-g]$/.test(token)) {
      const index = token.charCodeAt(0) - 97;
      return (args) => args[index] as Value;
    }
    const call = FUNCTIONS[token];
    if (!call) return () => Number(token);
    const parameters: Calculation[] = [];
    do {
      next += 1;
      parameters.push(operation(0));
    } while (tokens[next] === ";");
    next += 1;
    return (args) => call(...parameters.map((parameter) => parameter(args)));
  };
  return operation(0);
};
