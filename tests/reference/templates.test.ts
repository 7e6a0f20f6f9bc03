import { catalog } from "../../functions/index";
import { CellError, type Cell } from "../../shared/cell";
import { NATIVE, nativeFormula } from "./nativeFormulas";
import type { Book } from "../../src/xlsx/book/book";
import { openXlsx, saveXlsx } from "../../src/xlsx/xlsxFile";
import { NAMESPACE, qualifiedName } from "../../src/workbook/namespace";
import { quotedText } from "../../src/workbook/formula";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type WorkbookPlan,
} from "../../src/workbook/plan";
import { describeWithLibreOffice } from "../support/libreOffice";
import { PlanWorkbook } from "../support/planWorkbook";
import { recalculated } from "../support/recalculated";
import { TEMPLATES } from "../support/templates";

jest.setTimeout(180_000);

/** The arguments of the parenthesis that is open at `from`, and where it closes. */
const argumentsFrom = (text: string, from: number): { readonly args: string[]; readonly end: number } => {
  const args: string[] = [];
  let [depth, start, isQuoted] = [0, from, false];
  for (let at = from; ; at++) {
    const sign = text[at];
    if (sign === undefined) throw new Error(`no end to the arguments in ${text}`);
    if (sign === '"') isQuoted = !isQuoted;
    if (isQuoted) continue;
    if (sign === "(" || sign === "{") depth += 1;
    if (depth === 0 && (sign === "," || sign === ")")) {
      args.push(text.slice(start, at));
      start = at + 1;
      if (sign === ")") return { args, end: at };
    }
    if (sign === ")" || sign === "}") depth -= 1;
  }
};

/** Functions whose native formula holds for every argument in a sheet, not just for one choice of a list. */
const REPLACED = catalog.filter(({ id }) => NATIVE[id]?.ranges.every((range) => typeof range !== "string"));

/** Our own functions, and those that need LibreOffice 24.8 or later. */
const NOT_IN_LIBREOFFICE = new RegExp(`\\b(?:${NAMESPACE}\\.|FILTER\\(|SEQUENCE\\()`);

/** The formula with our functions replaced by native ones, wherever the arguments have a native formula. */
const inNativeWords = (text: string): string =>
  REPLACED.reduce((written, spec) => {
    const name = `${qualifiedName(spec)}(`;
    const taken = NATIVE[spec.id]?.ranges.length ?? 0;
    // Last first, so that a nested call is replaced before the call around it.
    const places = [...written.matchAll(new RegExp(`\\b${name.replace(/[.(]/g, "\\$&")}`, "g"))].reverse();
    return places.reduce((text, { index: at }) => {
      const { args, end } = argumentsFrom(text, at + name.length);
      if (args.length > taken) return text;
      const given = spec.parameters.map(({ default: standard }, index) => args[index] ?? String(standard));
      const native = nativeFormula(spec.id, (index) => `(${given[index] ?? ""})`).replaceAll(";", ",");
      return `${text.slice(0, at)}(${native})${text.slice(end + 1)}`;
    }, written);
  }, text);

const contentOf = (value: Cell | string): CellContent =>
  typeof value === "number" ? number(value) : text(String(value));

/** A formula that equals the value: the sheet counts formulas that were typed over, and empty text isn't blank. */
const formulaFor = (value: Cell | string): CellContent =>
  formula(`=${typeof value === "number" ? String(value) : quotedText(String(value))}`);

/** Native formulas wherever possible; elsewhere, the values of our functions. */
const inNativeFormulas = ({ sheets, names }: WorkbookPlan, ours: Values): WorkbookPlan => ({
  sheets: sheets.map((sheet) => {
    const native = sheet.cells.flatMap((cell): PlannedCell[] => {
      if (cell.content?.kind !== "formula") return [];
      const written = inNativeWords(cell.content.formula);
      return NOT_IN_LIBREOFFICE.test(written) ? [] : [{ ...cell, content: formula(written) }];
    });
    const placesOf = (cells: readonly PlannedCell[]): Set<string> =>
      new Set(cells.map(({ row, column }) => `${sheet.name} ${row},${column}`));
    const places = placesOf(native);
    const formulas = placesOf(sheet.cells.filter(({ content }) => content?.kind === "formula"));
    const others = [...ours].flatMap(([place, value]): PlannedCell[] => {
      const [, row, column] = /^(.*) (\d+),(\d+)$/.exec(place)?.slice(1).map(Number) ?? [];
      return place.startsWith(`${sheet.name} `) &&
        !places.has(place) &&
        row !== undefined &&
        column !== undefined
        ? [
            {
              row,
              column,
              content: formulas.has(place) || value === "" ? formulaFor(value) : contentOf(value),
            },
          ]
        : [];
    });
    return { ...sheet, cells: [...native, ...others] };
  }),
  names,
});

const savedOf = async (plan: WorkbookPlan): Promise<Uint8Array> => {
  const workbook = new PlanWorkbook(plan);
  const saved = saveXlsx(undefined, (await workbook.calculated()).book());
  workbook.dispose();
  return saved;
};

type Values = ReadonlyMap<string, Cell | string>;

const valuesOf = ({ sheets }: Book): Values =>
  new Map(
    sheets.flatMap(({ name, cells }) =>
      [...cells].flatMap(([row, inRow]) =>
        [...inRow].flatMap(([column, { value }]) =>
          value === null
            ? []
            : [[`${name} ${row},${column}`, value instanceof CellError ? value.code : value] as const],
        ),
      ),
    ),
  );

const isSame = (one: Cell | string = "", other: Cell | string = ""): boolean =>
  typeof one === "number" && typeof other === "number"
    ? Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one))
    : one === other;

const formulasOf = ({ sheets }: WorkbookPlan): string[] =>
  sheets.flatMap(({ cells }) =>
    cells.flatMap(({ content }) => (content?.kind === "formula" ? [content.formula] : [])),
  );

describeWithLibreOffice("templates in native formulas, calculated by LibreOffice", () => {
  it.each(Object.entries(TEMPLATES))("give the same value in every cell: %s", async (_, plan) => {
    const ours = valuesOf(openXlsx(await savedOf(plan)).book);
    const native = inNativeFormulas(plan, ours);
    expect(formulasOf(native).length).toBeGreaterThan(0);
    const theirs = valuesOf(await recalculated(await savedOf(native)));
    const differing = [...new Set([...ours.keys(), ...theirs.keys()])]
      .filter((place) => !isSame(ours.get(place), theirs.get(place)))
      .map((place) => `${place}: ${String(ours.get(place))}, LibreOffice says ${String(theirs.get(place))}`);
    expect(differing).toEqual([]);
  });
});

test("most of a takeoff can be written in native formulas", () => {
  const formulas = formulasOf(TEMPLATES["the takeoff"] ?? { sheets: [], names: [] });
  const native = formulas.map(inNativeWords);
  expect(native.filter((each) => !NOT_IN_LIBREOFFICE.test(each)).length).toBeGreaterThan(
    0.75 * formulas.length,
  );
  expect(native.filter((each, index) => each !== formulas[index]).length).toBeGreaterThan(100);
});
