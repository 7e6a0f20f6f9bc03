import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../src/build/paths";
import { VERSION } from "../../shared/version";
import { extendBench } from "./extendBench";
import { layoutBench } from "./layoutBench";
import type { BenchRow, Measure } from "./measure";
import { pageBench } from "./pageBench";
import { practiceBench } from "./practiceBench";
import { refusedRoofs } from "../support/randomRun";
import { roofBench } from "./roofBench";
import { scalarBench } from "./scalarBench";
import { takeoffBench } from "./takeoffBench";
import { trimBench } from "./trimBench";

const HEADINGS = ["", "size", "ms", "per unit, first = 1", "of its peer's", "limit"];

const limitInWords = (value: number, most: number | undefined, unit: string): string =>
  most === undefined ? "" : `${Number(most.toFixed(1))} ${unit} ${value <= most ? "kept" : "BROKEN"}`;

const cellsOfRow = ({ name, size, ms, ratio, oracleRatio, limitMs }: BenchRow): string[] => [
  name,
  String(size),
  ms.toFixed(2),
  ratio.toFixed(2),
  oracleRatio === undefined ? "" : oracleRatio.toFixed(2),
  limitInWords(ms, limitMs, "ms"),
];

const cellsOfMeasure = ({ name, value, unit, most }: Measure): string[] => [
  name,
  value.toFixed(1),
  unit,
  limitInWords(value, most, unit),
];

/** Columns as wide as their widest cell: the name at the left, numbers at the right. */
const inColumns = (rows: readonly (readonly string[])[]): string => {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const pad = (cell: string, column: number): string =>
    column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0);
  return rows.map((row) => row.map(pad).join("  ")).join("\n");
};

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};

const JSON_FILE = join(ROOT, "dist/bench/bench.json");

const RANDOM_ROOFS = 100_000;

/** Counts the random roofs that end in `#N/A`. The goal is none; returns whether it is met. */
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
    ...scalarBench(),
    ...(await takeoffBench()),
  ];
  const measures = await pageBench();
  print(inColumns([HEADINGS, ...rows.map(cellsOfRow)]));
  print(inColumns(measures.map(cellsOfMeasure)));
  writeFileSync(JSON_FILE, `${JSON.stringify({ version: VERSION, rows, measures }, null, 2)}\n`);
  print(`JSON: ${JSON_FILE}`);
  const areLimitsKept =
    rows.every(({ ms, limitMs }) => limitMs === undefined || ms <= limitMs) &&
    measures.every(({ value, most }) => most === undefined || value <= most);
  process.exitCode = printRandomRoofs() && areLimitsKept ? 0 : 1;
};

void run();
