import { call, callForNumber } from "../support/call";

/** Navy NAVEDTRA 14044, Builder 3&2 vol. 2, Assignment 3 item 3-27: the key wasn't seen, 127 is one of the options. */
it("42 1/3 squares of one-third-square bundles are 127 bundles, one of the options of a Navy question", () => {
  expect(call("PACKS", "42 1/3", "1/3")).toBe(127);
});

/**
 * US Army Engineer School Subcourse EN0069 Ed. A, Lesson 3 self-test: a gable roof on a building 60 ft long, rafters
 * of 11 ft 4 in line length and a 2 ft overhang. The question was read; the answer is worked out here: 2 x 60 x 13 1/3.
 */
it("the gable roof of an Army question is 1600 sq ft, 16 squares, as worked out by hand", () => {
  const planeArea = callForNumber("OUTLINEAREA", call("OUTLINE", "rectangle", 60, `13' 4"`));
  expect(2 * planeArea).toBeCloseTo(1600, 9);
  expect(callForNumber("SQUARES", 2 * planeArea)).toBeCloseTo(16, 12);
});

/** Building Trades Pocketbook (Colliery Engineer Co.): number of 4 in shingles per square, by exposure. */
it.each([
  [4, 900],
  [5, 720],
  [6, 600],
  [8, 450],
])("shingles 4 in wide at %d in exposure: %d per square", (exposure, perSquare) => {
  const coursesInTenFeet = callForNumber("COURSES", 10, exposure);
  const shinglesInACourse = callForNumber("PACKS", 120, 4);
  // The book divides areas, so only exposures that divide 10 ft give whole courses.
  expect(coursesInTenFeet * shinglesInACourse).toBe(perSquare);
});
