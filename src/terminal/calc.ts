import { createInterface } from "node:readline";
import { localCatalog } from "../hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../hosts/local/workbook/headless";
import { answerLine } from "./answerLine";

/**
 * `npm run -s calc -- '=GABLE.COURSES(20, 12)'`: prints one line of JSON per formula, in order. Without an argument it reads one
 * formula per line from standard input. Exits with 1 if a line couldn't be parsed.
 */
const main = async (): Promise<void> => {
  const engine = createHeadlessEngine(localCatalog);
  const formulas = process.argv.slice(2);
  const lines =
    formulas.length > 0 ? formulas : createInterface({ input: process.stdin, crlfDelay: Infinity });
  for await (const line of lines) {
    const { json, parsed } = await answerLine(engine, line);
    process.stdout.write(`${json}\n`);
    if (!parsed) process.exitCode = 1;
  }
  engine.dispose();
};

// A reader such as `| head -1` may close the pipe early, which isn't a failure.
process.stdout.on("error", ({ code }: NodeJS.ErrnoException) => {
  process.exit(code === "EPIPE" ? 0 : 1);
});

void main();
