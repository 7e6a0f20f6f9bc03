import { catalog } from "../../functions/index";
import { openXlsx } from "../../src/xlsx/xlsxFile";
import { drawArguments, NATIVE, nativeFormula } from "./nativeFormulas";
import { randomFrom } from "../support/random";
import { call } from "../support/call";
import { convert, describeWithLibreOffice } from "../support/libreOffice";

jest.setTimeout(180_000);

const ROWS = 40;
const random = randomFrom(1867);

const rows = Object.keys(NATIVE).flatMap((id) =>
  Array.from({ length: ROWS }, () => {
    const args = drawArguments(id, random);
    return { id, args, native: nativeFormula(id, (index) => String(args[index])) };
  }),
);

const fods = (formulas: readonly string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Native">${formulas
    .map(
      (formula) =>
        `<table:table-row><table:table-cell table:formula="of:=${formula.replaceAll("<", "&lt;").replaceAll(">", "&gt;")}"/></table:table-row>`,
    )
    .join("")}</table:table></office:spreadsheet></office:body></office:document>`;

describeWithLibreOffice("the spreadsheet's own functions, calculated by LibreOffice", () => {
  let theirs: readonly unknown[];
  beforeAll(async () => {
    const file = await convert(fods(rows.map(({ native }) => native)), "fods", "xlsx");
    const [sheet] = openXlsx(new Uint8Array(file)).book.sheets;
    theirs = rows.map((_, row) => sheet?.cells.get(row)?.get(0)?.value);
  });

  it.each(Object.keys(NATIVE))("agree with %s", (id) => {
    const compared = rows.flatMap((row, index) => (row.id === id ? [{ ...row, theirs: theirs[index] }] : []));
    expect(compared).toHaveLength(ROWS);
    for (const { args, native, theirs: expected } of compared) {
      const ours = call(id, ...args);
      if (typeof expected !== "number" || typeof ours !== "number")
        throw new Error(
          `${id}(${args.join(", ")}): we say ${String(ours)}, ${native} says ${String(expected)}`,
        );
      const difference = Math.abs(ours - expected);
      if (difference > 1e-9 * Math.max(1, Math.abs(expected)))
        throw new Error(`${id}(${args.join(", ")}): we say ${ours}, ${native} says ${expected}`);
    }
  });
});

test("every function that takes single cells and returns a number has a native counterpart", () => {
  const plain = catalog.filter(
    ({ columns, parameters, examples }) =>
      !columns &&
      parameters.every(({ kind }) => kind.shape === "cell") &&
      examples.every(({ result }) => typeof result === "number"),
  );
  expect(
    plain
      .filter(({ id }) => !(id in NATIVE))
      .map(
        ({ id }) =>
          `add ${id} to tests/reference/nativeFormulas.ts: its formula and the ranges of its arguments`,
      ),
  ).toEqual([]);
});
