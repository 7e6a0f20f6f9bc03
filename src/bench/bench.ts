import { extendBench } from "./extendBench";
import { layoutBench } from "./layoutBench";
import type { BenchRow } from "./measure";
import { practiceBench } from "./practiceBench";
import { refusedRoofs } from "./randomRun";
import { roofBench } from "./roofBench";
import { trimBench } from "./trimBench";

const HEADINGS = ["", "size", "ms", "per unit, first = 1", "of the oracle's", "limit ms"];

const cells = ({ name, size, ms, ratio, oracleRatio, limitMs }: BenchRow): string[] => [
  name,
  String(size),
  ms.toFixed(2),
  ratio.toFixed(2),
  oracleRatio === undefined ? "" : oracleRatio.toFixed(2),
  limitMs === undefined ? "" : `${limitMs} ${ms <= limitMs ? "kept" : "BROKEN"}`,
];

/** Columns as wide as their widest cell: the name at the left, numbers at the right. */
const inColumns = (rows: readonly (readonly string[])[]): string => {
  const widths = HEADINGS.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const pad = (cell: string, column: number): string =>
    column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0);
  return rows.map((row) => row.map(pad).join("  ")).join("\n");
};

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};

const RANDOM_ROOFS = 100_000;

/** How many of many random roofs end in `#N/A`; the aim is none. Returns whether it is met. */
const printRandomRoofs = (): boolean => {
  const before = performance.now();
  const refused = refusedRoofs(1, RANDOM_ROOFS);
  const seconds = ((performance.now() - before) / 1000).toFixed(0);
  print(`${RANDOM_ROOFS} random roofs in ${seconds} s: ${refused.length} end in #N/A`);
  for (const { seed, sentence } of refused.slice(0, 10)) print(`  seed ${seed}: ${sentence}`);
  return refused.length === 0;
};

const run = async (): Promise<void> => {
  const rows = [
    ...layoutBench(),
    ...(await roofBench()),
    ...(await trimBench()),
    ...(await extendBench()),
    ...practiceBench(),
  ];
  print(inColumns([HEADINGS, ...rows.map(cells)]));
  const limitsKept = rows.every(({ ms, limitMs }) => limitMs === undefined || ms <= limitMs);
  process.exitCode = printRandomRoofs() && limitsKept ? 0 : 1;
};

void run();
