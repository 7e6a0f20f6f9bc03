import {
  ArrayValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { CellError } from "../../../../../shared/cell";
import {
  functionClasses,
  functionDescriptions,
} from "../../../../../src/hosts/local/formulas/engineFunctions";
import { ErrorMessages } from "../../../../../src/hosts/local/engine/errorMessages";
import { fromAnswer, toArgument } from "../../../../../src/hosts/local/formulas/valueConversion";
import { fakeCatalog } from "../fakeCatalog";

const block = (rows: (NumberValueObject | null)[][], row = -1, column = -1) =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "book",
    sheetId: "sheet",
    row,
    column,
  });

describe("arguments", () => {
  test("a number, a text, a blank, an omitted argument", () => {
    expect(toArgument(NumberValueObject.create(1.5))).toBe(1.5);
    expect(toArgument(StringValueObject.create(""))).toBe("");
    expect(toArgument(block([[null]]))).toBeNull();
    expect(toArgument(NullValueObject.create())).toBeUndefined();
    expect(toArgument(undefined)).toBeUndefined();
  });

  test("a block keeps its shape, and its blanks differ from 0", () => {
    const zero = NumberValueObject.create(0);
    expect(
      toArgument(
        block([
          [zero, null],
          [null, zero],
        ]),
      ),
    ).toEqual([
      [0, null],
      [null, 0],
    ]);
  });

  test("an error keeps its message", () => {
    const error = ErrorValueObject.create(ErrorType.NA, "no stock is long enough");
    expect(toArgument(error)).toEqual(new CellError("#N/A", "no stock is long enough"));
  });

  test("an error in a cell gets the message that was recorded for the cell", () => {
    const bare = ErrorValueObject.create(ErrorType.NA);
    const array = ArrayValueObject.create({
      calculateValueList: [[bare]],
      rowCount: 1,
      columnCount: 1,
      unitId: "book",
      sheetId: "sheet",
      row: 3,
      column: 2,
    });
    const errorMessages = new ErrorMessages();
    const place = { unitId: "book", sheetId: "sheet", row: 3, column: 2 };
    errorMessages.record(place, ErrorValueObject.create(ErrorType.NA, "too long"));
    const sentenceAt = (unitId: string, sheetId: string, row: number, column: number, code: string) =>
      errorMessages.at({ unitId, sheetId, row, column }, code);
    expect(toArgument(array, sentenceAt)).toEqual(new CellError("#N/A", "too long"));
    errorMessages.record(place, NumberValueObject.create(1));
    expect(toArgument(array, sentenceAt)).toEqual(new CellError("#N/A", ""));
  });
});

test("an error code that the engine doesn't know becomes #VALUE!", () => {
  expect(fromAnswer(new CellError("#ODD!", "odd")).getValue()).toBe("#VALUE!");
});

test("the error messages of a spill are found cell by cell and forgotten together", () => {
  const errorMessages = new ErrorMessages();
  const place = { unitId: "book", sheetId: "sheet", row: 1, column: 1 };
  const inside = { ...place, row: 2, column: 2 };
  errorMessages.record(
    place,
    fromAnswer([
      [1, 2],
      [3, new CellError("#N/A", "row 2")],
    ]),
  );
  expect(errorMessages.at(inside, "#N/A")).toBe("row 2");
  expect(errorMessages.at(inside, "#VALUE!")).toBe("");
  expect(errorMessages.at(inside, 5)).toBe("");
  errorMessages.record(place, fromAnswer(1));
  expect(errorMessages.at(inside, "#N/A")).toBe("");
});

test("every catalog entry becomes a class and a description", () => {
  expect(functionClasses(fakeCatalog, new ErrorMessages()).map(([, name]) => name)).toEqual([
    "GABLE.DOUBLE",
    "GABLE.SHOW",
    "GABLE.COURSES",
    "GABLE.NOSTOCK",
  ]);
  expect(functionDescriptions(fakeCatalog)[0]).toMatchObject({
    functionName: "GABLE.DOUBLE",
    description: "Twice a number.",
    functionParameter: [
      { name: "value", require: 1 },
      { name: "extra", require: 0 },
    ],
  });
});
