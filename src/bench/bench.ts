import { layoutBench } from "./layoutBench";
import type { BenchRow } from "./measure";

const HEADINGS = ["", "size", "ms", "per unit, first = 1", "limit ms"];

const cells = ({ name, size, ms, ratio, limitMs }: BenchRow): string[] => [
  name,
  String(size),
  ms.toFixed(2),
  ratio.toFixed(2),
  limitMs === undefined ? "" : `${limitMs} ${ms <= limitMs ? "kept" : "BROKEN"}`,
];

/** Columns as wide as their widest cell: the name at the left, numbers at the right. */
const inColumns = (rows: readonly (readonly string[])[]): string => {
  const widths = HEADINGS.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const pad = (cell: string, column: number): string =>
    column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0);
  return rows.map((row) => row.map(pad).join("  ")).join("\n");
};

const rows = layoutBench();
process.stdout.write(`${inColumns([HEADINGS, ...rows.map(cells)])}\n`);
process.exitCode = rows.some(({ ms, limitMs }) => limitMs !== undefined && ms > limitMs) ? 1 : 0;
