import { catalog } from "../../../../../functions/index";
import type { ExcelRuntime } from "../../../../../src/hosts/excel/customFunctions/excelValues";
import { registerWithExcel } from "../../../../../src/hosts/excel/customFunctions/register";

class FakeError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const associated = (): Map<string, (...values: unknown[]) => unknown> => {
  const functions = new Map<string, (...values: unknown[]) => unknown>();
  const ErrorCode = {
    invalidValue: "#VALUE!",
    notAvailable: "#N/A",
    divisionByZero: "#DIV/0!",
    invalidNumber: "#NUM!",
    nullReference: "#NULL!",
    invalidName: "#NAME?",
    invalidReference: "#REF!",
  };
  const runtime = {
    associate: (id: string, run: (...values: unknown[]) => unknown) => functions.set(id, run),
    Error: FakeError,
    ErrorCode,
  } as unknown as ExcelRuntime;
  registerWithExcel(catalog, runtime);
  return functions;
};

const invocation = { functionName: "COURSES" };

describe("registration with Excel", () => {
  const functions = associated();
  const call = (id: string, ...values: unknown[]): unknown => functions.get(id)?.(...values);

  it("associates the whole catalog", () => {
    expect([...functions.keys()]).toEqual(catalog.map(({ id }) => id));
  });

  it("answers blocks at once, with null for what is left out and the invocation object passed over", () => {
    expect(call("COURSES", [[20]], [[12]], invocation)).toEqual([[20]]);
    expect(call("CLIPCOUNT", [[20]], [[12]], null, invocation)).toEqual([[21]]);
    expect(call("COURSES", [[20], [10]], [[12]], invocation)).toEqual([[20], [10]]);
  });

  it("takes Excel's blanks as blanks", () => {
    expect(call("COURSES", [[""]], [[""]], invocation)).toEqual([[""]]);
    expect(call("CLIPCOUNT", [[20]], [[12]], [[""]], invocation)).toEqual([[21]]);
  });

  it("throws Excel's own error with our message", () => {
    expect(() => call("CLIPCOUNT", [[20]], [[0]], null, invocation)).toThrow(
      expect.objectContaining({ code: "#VALUE!", message: "spacing must be more than 0 in, got 0" }) as Error,
    );
  });

  it("puts an error into its own cell of a block, and passes on one that came", () => {
    const divided = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };
    expect(call("COURSES", [[20], [-1], [divided]], [[12]], invocation)).toEqual([
      [20],
      [new FakeError("#VALUE!", "slopeLength must be at least 0 ft, got -1")],
      [new FakeError("#DIV/0!")],
    ]);
  });
});
