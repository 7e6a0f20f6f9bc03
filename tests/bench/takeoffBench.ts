import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { a1 } from "../../src/workbook/address";
import { formula, number, type PlannedCell, type WorkbookPlan } from "../../src/workbook/plan";
import { medianOf, type BenchRow } from "./measure";
import { drawArguments, nativeFormula } from "../reference/nativeFormulas";
import { randomFrom } from "../support/random";

const ROWS = 10_000;
const RUNS = 3;
/** The goal. */
const MOST_OF_NATIVE = 1.3;

/** One plane per row: eave, run, pitch and overhang are typed; the rest is calculated from them and from earlier columns. */
const TYPED = 4;
const WORKED_OUT: readonly { readonly id: string; readonly columns: readonly (number | string)[] }[] = [
  { id: "RAFTERLENGTH", columns: [1, 2, 3] },
  { id: "COURSES", columns: [4, "12"] },
  { id: "CLIPCOUNT", columns: [0, "12"] },
  { id: "SLOPEAREA", columns: [0, 2] },
];

type FormulaOf = (id: string, argumentAt: (index: number) => string) => string;

const ours: FormulaOf = (id, argumentAt) => {
  const count = WORKED_OUT.find((each) => each.id === id)?.columns.length ?? 0;
  return `GABLE.${id}(${Array.from({ length: count }, (_, index) => argumentAt(index)).join(",")})`;
};
const native: FormulaOf = (id, argumentAt) => nativeFormula(id, argumentAt).replaceAll(";", ",");

const bid = (formulaOf: FormulaOf): WorkbookPlan => {
  const random = randomFrom(ROWS);
  const cells = Array.from({ length: ROWS }, (_, row): PlannedCell[] => {
    const [run, pitch, overhang] = drawArguments("RAFTERLENGTH", random) as [number, number, number];
    const [eave] = drawArguments("CLIPCOUNT", random) as [number];
    const typed = [eave, run, pitch, overhang].map((value, column) => ({
      row,
      column,
      content: number(value),
    }));
    const workedOut = WORKED_OUT.map(({ id, columns }, index) => {
      const argumentAt = (at: number): string => {
        const column = columns[at];
        return typeof column === "number" ? a1({ row, column }) : (column ?? "");
      };
      return { row, column: TYPED + index, content: formula(`=${formulaOf(id, argumentAt)}`) };
    });
    return [...typed, ...workedOut];
  });
  return {
    sheets: [{ name: "Bid", cells: cells.flat(), columnWidths: [], rowHeights: {}, frozenRows: 0 }],
    names: [],
  };
};

/** Milliseconds that a freshly opened workbook takes to calculate. */
const runOnce = async (plan: WorkbookPlan): Promise<number> => {
  const before = performance.now();
  const engine = createHeadlessEngine(localCatalog, plan);
  await engine.calculated();
  const ms = performance.now() - before;
  if (
    typeof engine.getCell({ sheet: "Bid", row: ROWS - 1, column: TYPED + WORKED_OUT.length - 1 }) !== "number"
  )
    throw new Error("the last row has no result");
  engine.dispose();
  return ms;
};

/** Ten thousand planes in a freshly opened workbook, against the same in native formulas, in alternation. */
export const takeoffBench = async (): Promise<BenchRow[]> => {
  const plans = [bid(ours), bid(native)] as const;
  const [oursMs, nativeMs]: [number[], number[]] = [[], []];
  for (let run = 0; run <= RUNS; run++) {
    const times = [await runOnce(plans[0]), await runOnce(plans[1])] as const;
    // The first run lets the engine compile.
    if (run === 0) continue;
    oursMs.push(times[0]);
    nativeMs.push(times[1]);
  }
  const [ms, peerMs] = [medianOf(oursMs), medianOf(nativeMs)];
  return [
    { name: `${ROWS} planes opened, native formulas`, size: ROWS, ms: peerMs, ratio: 1 },
    {
      name: `${ROWS} planes opened, four functions each`,
      size: ROWS,
      ms,
      ratio: ms / peerMs,
      oracleRatio: ms / peerMs,
      limitMs: Math.round(MOST_OF_NATIVE * peerMs),
    },
  ];
};
