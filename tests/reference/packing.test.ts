import { checkedCuts } from "../support/checkedCuts";
import { hasOpenSets, packingSet, packingSets, type PackingSet } from "../support/openPackingSets";

/**
 * OR-Library (J. E. Beasley 1990), sets of E. Falkenauer (1996), sizes taken for inches of run and the capacity for the
 * stock. The optima of u120_08, u120_19, u250_07 and u250_12 are below the files' own counts and were found and proved
 * with a general solver; all others are the files' and equal the sum of sizes over the capacity, rounded up, but for
 * u250_13.
 */
const OPTIMA = {
  binpack1_u120: "48 49 46 49 50 48 48 49 50 46 52 49 48 49 50 48 52 52 49 49",
  binpack2_u250: "99 100 102 100 101 101 102 103 105 101 105 101 105 103 100 105 97 100 100 102",
};
const TRIPLETS = ["Falkenauer_t120_00", "Falkenauer_t120_01", "Falkenauer_t120_02"];
const OPTIMUM_OF_TRIPLETS = 40;
const LIMIT_MS = 1000;

/** Checks the plan piece by piece, and returns the count if it is proved. */
const provedCount = ({ capacity, sizes }: PackingSet): number => {
  const cuts = checkedCuts({ runs: sizes.map((size) => size / 12), stock: [capacity] });
  expect(cuts.verdict).toBe("proved fewest");
  return cuts.stocks;
};

if (hasOpenSets) {
  describe.each(Object.entries(OPTIMA))("%s", (file, optima) => {
    const sets = packingSets(`${file}.txt`);
    it.each(optima.split(" ").map((optimum, index) => [index, Number(optimum)] as const))(
      "instance %d needs %d, proved within a second",
      (index, optimum) => {
        const before = performance.now();
        expect(provedCount(sets[index] as PackingSet)).toBe(optimum);
        expect(performance.now() - before).toBeLessThan(LIMIT_MS);
      },
    );
  });

  it.each(TRIPLETS)("%s needs 40, every stock full", (file) => {
    expect(provedCount(packingSet(`${file}.txt`))).toBe(OPTIMUM_OF_TRIPLETS);
  });
} else {
  it.skip("the open packing sets aren't next to this repository, so their optima aren't tested", () =>
    undefined);
}
