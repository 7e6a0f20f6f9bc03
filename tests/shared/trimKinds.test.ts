import { EDGE_KINDS } from "../../functions/roof/roofParts";
import { TRIM_KINDS } from "../../shared/trimKinds";
import { callForNumber } from "../support/call";

const kinds = Object.values(TRIM_KINDS);

describe("the kinds of trim", () => {
  it("take their lengths from kinds of edge that a roof has", () => {
    const edges: readonly string[] = EDGE_KINDS;
    const taken = kinds.flatMap(({ edge }) => edge ?? []);
    expect(taken).toHaveLength(6);
    expect(taken.filter((edge) => !edges.includes(edge))).toEqual([]);
  });

  it("have each a label of its own, a fastener, and a lap that the functions take", () => {
    expect(new Set(kinds.map(({ label }) => label)).size).toBe(kinds.length);
    for (const { stockIn, lapIn, clipSpacingIn, nailSpacingIn } of kinds) {
      expect(callForNumber("TRIMPIECES", 10, stockIn, lapIn)).toBe(1);
      expect(callForNumber("CLIPCOUNT", 10, clipSpacingIn || nailSpacingIn)).toBeGreaterThan(1);
    }
  });

  it("have the trade's 12 in on centre for clips, and 10 in for the drip edge", () => {
    expect(new Set(kinds.map(({ clipSpacingIn }) => clipSpacingIn))).toEqual(new Set([0, 12]));
    expect(TRIM_KINDS.eaveStarter.nailSpacingIn).toBe(12);
    expect(TRIM_KINDS.dripEdge.nailSpacingIn).toBe(10);
  });
});
