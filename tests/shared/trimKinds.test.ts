import { EDGE_KINDS } from "../../functions/roof/roofParts";
import { TRIM_EDGES, TRIM_KINDS, type TrimKind } from "../../shared/trimKinds";
import { callForNumber } from "../support/call";

const kinds: readonly TrimKind[] = Object.values(TRIM_KINDS);

describe("the kinds of trim", () => {
  it("leave no edge of a roof without a trim or a word for one", () => {
    const asRuns = EDGE_KINDS.map((kind) => (kind === "rake" ? "gable" : kind));
    const words: readonly string[] = TRIM_EDGES;
    expect(asRuns.filter((edge) => !words.includes(edge))).toEqual([]);
    const followed = new Set<string>(kinds.map(({ follows }) => follows));
    // A step between eaves of different height takes what the roofer says.
    expect(words.filter((edge) => !followed.has(edge))).toEqual(["eave step"]);
  });

  it("have each a label of its own, a fastener, and a stock and lap that the functions take", () => {
    expect(new Set(kinds.map(({ label }) => label)).size).toBe(kinds.length);
    for (const { stockIn = 120, lapIn = 0, clippedEdges, nailedEdges } of kinds) {
      expect(callForNumber("TRIMPIECES", 1, stockIn, lapIn)).toBe(1);
      expect(clippedEdges + nailedEdges).toBeGreaterThan(0);
    }
  });

  it("nail the drip edge 10 in on center at most, as a Navy specification does", () => {
    expect(TRIM_KINDS.dripEdge.nailSpacingIn).toBe(10);
  });
});
