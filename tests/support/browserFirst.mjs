import Sequencer from "@jest/test-sequencer";

/** Browser tests take long and their files are short: Jest would begin with them last where it has no times of an earlier run. */
export default class extends Sequencer {
  sort(tests) {
    const isBrowserTest = ({ path }) => /[\\/]tests[\\/]browser[\\/]/.test(path);
    const sorted = super.sort(tests);
    return [...sorted.filter(isBrowserTest), ...sorted.filter((test) => !isBrowserTest(test))];
  }
}
