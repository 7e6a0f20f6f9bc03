import { catalog } from "../../functions/index";
import type { FunctionSpec } from "../../shared/spec/spec";
import { runFunction } from "../../shared/spec/runner";
import { libraryFormula } from "./libraryFormula";
import { medianMs, type BenchRow } from "./measure";
import { drawArguments, NATIVE } from "../reference/nativeFormulas";
import { randomFrom } from "../support/random";

const CALLS = 1_000;

/** A function called through the runner, as every host calls it, against the same in a spreadsheet-function library. */
const rowOf = (spec: FunctionSpec, formula: string): BenchRow => {
  const random = randomFrom(CALLS);
  const inputs = Array.from({ length: CALLS }, () => drawArguments(spec.id, random));
  const theirs = libraryFormula(formula);
  const ms = medianMs(() => {
    for (const args of inputs) runFunction(spec, args);
  });
  const libraryMs = medianMs(() => {
    for (const args of inputs) theirs(args);
  });
  const callsASecond = Math.round((CALLS / ms) * 1_000).toLocaleString("en-US");
  return {
    name: `${spec.id}: ${CALLS} calls, ${callsASecond} a second`,
    size: CALLS,
    ms,
    ratio: 1,
    oracleRatio: ms / libraryMs,
  };
};

/** Functions of single values whose native formula calls a spreadsheet function. Plain arithmetic has no library call to compare with. */
export const scalarBench = (): BenchRow[] =>
  catalog.flatMap((spec) => {
    const formula = NATIVE[spec.id]?.formula;
    return formula !== undefined && /[A-Z]\(/.test(formula) ? [rowOf(spec, formula)] : [];
  });
