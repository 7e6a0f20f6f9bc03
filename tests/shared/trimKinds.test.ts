import { EDGE_KINDS } from "../../functions/roof/roofParts";
import { TRIM_EDGES, TRIM_KINDS, type TrimKind } from "../../shared/trimKinds";
import { callForNumber } from "../support/call";

const kinds: readonly TrimKind[] = Object.values(TRIM_KINDS);

describe("the kinds of trim", () => {
  it("cover every edge of a roof", () => {
    const asRuns = EDGE_KINDS.map((kind) => (kind === "rake" ? "gable" : kind));
    const words: readonly string[] = TRIM_EDGES;
    expect(
      asRuns
        .filter((edge) => !words.includes(edge))
        .map((edge) => `add "${edge}" to TRIM_EDGES in shared/trimKinds.ts`),
    ).toEqual([]);
    const followed = new Set<string>(kinds.map(({ follows }) => follows));
    // The roofer chooses the trim for a step between eaves of different heights.
    expect(
      words
        .filter((edge) => edge !== "eave step" && !followed.has(edge))
        .map((edge) => `add a kind of trim that follows "${edge}" to TRIM_KINDS in shared/trimKinds.ts`),
    ).toEqual([]);
    expect(followed).not.toContain("eave step");
  });

  it("each have a unique label, a fastener, and a stock length and lap that the functions accept", () => {
    expect(new Set(kinds.map(({ label }) => label)).size).toBe(kinds.length);
    for (const { label, stockIn = 120, lapIn = 0, clippedEdges, nailedEdges } of kinds) {
      expect(callForNumber("TRIMPIECES", 1, stockIn, lapIn)).toBe(1);
      if (clippedEdges + nailedEdges === 0)
        throw new Error(`give "${label}" a clipped or a nailed edge in shared/trimKinds.ts`);
    }
  });

  it("nail the drip edge at most 10 in on center, as a Navy specification requires", () => {
    expect(TRIM_KINDS.dripEdge.nailSpacingIn).toBe(10);
  });
});
