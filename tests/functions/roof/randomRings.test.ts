import { refusedRoofs } from "../../../src/bench/randomRun";

/** The long run of 100,000 is the bench's; these are other seeds. */
const ROOFS = 4000;

describe("random footprints of 3 to 30 sides and more, pitches and gables at random", () => {
  it(`none of ${ROOFS} ends in #N/A`, () => {
    expect(refusedRoofs(5_000_000, ROOFS)).toEqual([]);
  });
});
