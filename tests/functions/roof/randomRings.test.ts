import { roofOver } from "../../../functions/roof/roof";
import { randomFrom } from "../../support/random";
import { courtRings } from "../../support/randomBuildings";
import { unequalPitches } from "../../support/randomRoofs";
import { refusedRoofs } from "../../support/randomRun";

/** The long run of 100,000 is the bench's; these are other seeds. */
const ROOFS = 4000;

describe("random footprints of 3 to 30 sides and more, pitches and gables at random", () => {
  it(`none of ${ROOFS} ends in #N/A`, () => {
    expect(refusedRoofs(5_000_000, ROOFS)).toEqual([]);
  });
});

describe("courtyards on a grid, pitches at random", () => {
  it("300 footprints: a roof over each", () => {
    for (let seed = 1; seed <= 300; seed++) {
      const random = randomFrom(seed);
      const rings = courtRings(random);
      expect(roofOver(rings, unequalPitches(random, rings.flat())).planes.length).toBeGreaterThan(0);
    }
  });
});
