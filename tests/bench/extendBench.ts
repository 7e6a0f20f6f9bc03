import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { a1 } from "../../src/workbook/address";
import { readBlock } from "../../src/sheets/extend/block";
import { extendPlan } from "../../src/sheets/extend/extendPlan";
import { optionById, resultOptions } from "../../src/sheets/extend/resultOptions";
import { guessBlock, mappedColumns } from "../../src/sheets/extend/mappedColumns";
import type { Survey } from "../../src/workbook/survey";
import type { CellPatch } from "../../src/workbook/patch";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type WorkbookPlan,
} from "../../src/workbook/plan";
import { medianOf, type BenchRow } from "./measure";

const ROWS = 10_000;
/** How much longer Extend may take than the same number of native formulas in the same engine. */
const MOST_OF_NATIVE = 1.5;
const RUNS = 5;

const bid = (): WorkbookPlan => {
  const heading = (content: string, column: number): PlannedCell => ({
    row: 0,
    column,
    content: text(content),
  });
  const rows = Array.from({ length: ROWS }, (_, index): PlannedCell[] => [
    { row: index + 1, column: 0, content: number(20 + (index % 40)) },
    { row: index + 1, column: 1, content: number(10 + (index % 25)) },
  ]);
  const cells = [heading("Eave (ft)", 0), heading("Slope length (ft)", 1), ...rows.flat()];
  return {
    sheets: [{ name: "Bid", cells, columnWidths: [], rowHeights: {}, frozenRows: 0 }],
    names: [],
  };
};

const extendedPatch = (survey: Survey): CellPatch => {
  const block = readBlock(survey);
  const supplies = {
    columns: mappedColumns(block, guessBlock(block)),
    names: survey.names,
    typed: { exposedHeightIn: "12" },
  };
  const picks = ["COURSES", "SQUARES"].map((id) => {
    const option = optionById(resultOptions(supplies), id);
    return { option, heading: option.heading };
  });
  return extendPlan(block, picks, supplies, block.lastColumn + 1);
};

/** Courses and squares in native functions. */
const nativeFormula = (row: number, column: number): CellContent => {
  const [eave, slope] = [a1({ row, column: 0 }), a1({ row, column: 1 })];
  return formula(
    column === 0
      ? `=IF(LEN(${slope})=0,"",ROUNDUP(ROUND(${slope}*12/12,9),0))`
      : `=IF(AND(LEN(${eave})=0,LEN(${slope})=0),"",${eave}*${slope}/100)`,
  );
};

/** The same results in native formulas, row by row. */
const nativePatch = (patch: CellPatch): CellPatch => ({
  ...patch,
  cells: patch.cells.map((line, index) =>
    index === 0
      ? line
      : line.map((cell, column) => cell && { ...cell, content: nativeFormula(patch.at.row + index, column) }),
  ),
});

/** Milliseconds from the survey to the last result, on a freshly opened workbook. */
const runOnce = async (change: (patch: CellPatch) => CellPatch): Promise<number> => {
  const engine = createHeadlessEngine(localCatalog, bid());
  await engine.calculated();
  const before = performance.now();
  const survey = engine.survey("Bid", { from: { row: 0, column: 0 }, to: { row: 0, column: 0 } });
  await engine.putCells(change(extendedPatch(survey)));
  await engine.calculated();
  const ms = performance.now() - before;
  engine.dispose();
  return ms;
};

/** Ten thousand rows of courses and squares next to a block, against as many native formulas, in alternation. */
export const extendBench = async (): Promise<BenchRow[]> => {
  await runOnce((patch) => patch);
  const [ours, native]: [number[], number[]] = [[], []];
  for (let run = 0; run < RUNS; run++) {
    ours.push(await runOnce((patch) => patch));
    native.push(await runOnce(nativePatch));
  }
  const [oursMs, nativeMs] = [medianOf(ours), medianOf(native)];
  return [
    { name: "extend, native formulas", size: 2 * ROWS, ms: nativeMs, ratio: 1 },
    {
      name: "extend, courses and squares",
      size: 2 * ROWS,
      ms: oursMs,
      ratio: oursMs / nativeMs,
      oracleRatio: oursMs / nativeMs,
      limitMs: Math.round(MOST_OF_NATIVE * nativeMs),
    },
  ];
};
