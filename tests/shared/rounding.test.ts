import fc from "fast-check";
import { isSame, wholeCount } from "../../shared/rounding";

describe("a whole count", () => {
  it("rounds up, but ignores floating-point error", () => {
    expect(wholeCount(20.000000001)).toBe(20);
    expect(wholeCount(20.001)).toBe(21);
    expect(wholeCount(0.1 + 0.2 - 0.3)).toBe(0);
    expect(Object.is(wholeCount(-0), 0)).toBe(true);
  });

  it("rounds up the decimals of a large number", () => {
    expect(wholeCount(999_999_999.4)).toBe(1_000_000_000);
    expect(wholeCount(123_456_789.01)).toBe(123_456_790);
  });

  it.each([1e9 + 1, 1e9 + 0.5, 1e300, Infinity, NaN])("rejects %d", (quantity) => {
    expect(() => wholeCount(quantity)).toThrow("the count comes to more than 1,000,000,000: check the units");
  });

  it("is unchanged when a whole number is multiplied and divided by the same factor", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999_999_999 }),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (times, one) => {
          expect(wholeCount((times * one) / one)).toBe(times);
        },
      ),
    );
  });
});

it("two numbers are the same if they differ only by floating-point error", () => {
  expect(isSame(0.1 + 0.2, 0.3)).toBe(true);
  expect(isSame(3, 3.0001)).toBe(false);
  expect(isSame(30_000, 30_000.001)).toBe(false);
});
