import { CellError } from "../../shared/cell";
import type { Host } from "../../src/workbook/host";
import { excelHost } from "../../src/hosts/excel/excelHost";
import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { readArea } from "../../src/workbook/address";
import { formula, number, text, type CellContent, type WorkbookPlan } from "../../src/workbook/plan";
import { fakeExcel, fakeWorkbook, type FakeWorkbook } from "./fakeExcel";

const contentOf = (held: string | number): CellContent => {
  if (typeof held === "number") return number(held);
  return held.startsWith("=") ? formula(held) : text(held.replace(/^'/, ""));
};

const planOf = ({ sheets, names }: FakeWorkbook): WorkbookPlan => ({
  sheets: sheets.map(({ name, cells }) => ({
    name,
    columnWidths: [],
    rowHeights: {},
    frozenRows: 0,
    cells: [...cells].flatMap(([address, { formula: held = "" }]) =>
      held === "" ? [] : [{ ...readArea(address).from, content: contentOf(held) }],
    ),
  })),
  names: [...names].map(([name, target]) => {
    const at = target.lastIndexOf("!");
    return { name, sheet: target.slice(0, at), range: target.slice(at + 1) };
  }),
});

/** Excel's stand-in calculates nothing: here the engine does, each time before the workbook is read. */
export const calculatedExcel = (plan: WorkbookPlan) => {
  const workbook = fakeWorkbook();
  const inner = excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  );
  const ready = inner.addSheets(plan);

  let isCalculated = false;
  const calculate = async (): Promise<void> => {
    await ready;
    if (isCalculated) return;
    isCalculated = true;
    const engine = createHeadlessEngine(localCatalog, planOf(workbook));
    await engine.calculated();
    for (const { name, cells } of workbook.sheets)
      for (const [address, cell] of cells) {
        if (typeof cell.formula !== "string" || !cell.formula.startsWith("=")) continue;
        const value = engine.getCell({ sheet: name, ...readArea(address).from });
        cell.shows =
          value instanceof CellError ? value.code : typeof value === "number" ? value : String(value ?? "");
      }
    engine.dispose();
  };

  const host: Host = {
    ...inner,
    addSheets: (added) => {
      isCalculated = false;
      return inner.addSheets(added);
    },
    contents: async () => {
      await calculate();
      return inner.contents();
    },
  };
  return {
    host,
    type: (sheet: string, address: string, typed: string | number | null): void => {
      const held = typeof typed === "string" && !typed.startsWith("=") ? `'${typed}` : (typed ?? "");
      isCalculated = false;
      const cells = workbook.sheets.find(({ name }) => name === sheet)?.cells;
      cells?.set(address, { ...cells.get(address), formula: held });
    },
    goTo: (sheet: string): void => {
      workbook.active = sheet;
    },
    isProtected: (sheet: string): boolean =>
      workbook.sheets.find(({ name }) => name === sheet)?.isProtected ?? false,
  };
};
