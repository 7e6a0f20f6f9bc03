const SHOWN = 15;

/** Lists the slowest test files of a whole run, above Jest's own counts. */
export default class {
  onRunComplete(_, { testResults }) {
    if (testResults.length < SHOWN) return;
    const timed = testResults.map(({ testFilePath, perfStats: { start, end } }) => ({
      path: testFilePath.replace(`${process.cwd()}/`, ""),
      seconds: (end - start) / 1000,
    }));
    timed.sort((one, other) => other.seconds - one.seconds);
    const lines = timed
      .slice(0, SHOWN)
      .map(({ path, seconds }) => `${seconds.toFixed(1).padStart(7)} s  ${path}\n`);
    process.stdout.write(`\nThe slowest test files:\n${lines.join("")}\n`);
  }
}
