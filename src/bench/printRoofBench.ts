import { refusedRoofs } from "./randomRun";
import { roofBench } from "./roofBench";

const RANDOM_ROOFS = 100_000;

const print = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

/** Prints the growth table, then how many of many random roofs end in `#N/A`. */
const run = async (): Promise<void> => {
  for (const { name, sides, ms, ratio } of await roofBench()) {
    const against = ratio === undefined ? "" : `, ${ratio.toFixed(2)} of the oracle's time`;
    print(`${name}, ${sides} sides: ${ms.toFixed(2)} ms${against}`);
  }
  const start = performance.now();
  const refused = refusedRoofs(1, RANDOM_ROOFS);
  const seconds = (performance.now() - start) / 1000;
  print(`${RANDOM_ROOFS} random roofs in ${seconds.toFixed(0)} s: ${refused.length} end in #N/A`);
  refused.slice(0, 10).forEach(({ seed, sentence }) => {
    print(`  seed ${seed}: ${sentence}`);
  });
};

void run();
