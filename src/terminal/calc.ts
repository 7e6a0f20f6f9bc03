import { createInterface } from "node:readline";
import { localCatalog } from "../hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../hosts/local/workbook/headless";
import { answerLine } from "./answerLine";

/**
 * `npm run -s calc -- '=GABLE.COURSES(20, 12)'`: one line of JSON a formula, in order. With no argument it reads a
 * formula a line from standard input. Exits with 1 where a line couldn't be parsed.
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

// A reader that has seen enough (`| head -1`) closes the pipe: that is no failure.
process.stdout.on("error", ({ code }: NodeJS.ErrnoException) => {
  process.exit(code === "EPIPE" ? 0 : 1);
});

void main();
