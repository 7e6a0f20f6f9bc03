import { memoizeLast } from "../../../functions/roof/memoizeLast";

describe("remembering the last answers", () => {
  it("computes each of the last few arguments once, and an older one again", () => {
    const compute = jest.fn((a: number, b: readonly number[] | undefined) => a + (b?.length ?? 0));
    const remembered = memoizeLast(compute, 2);
    expect([remembered(1, [1]), remembered(1, [1]), remembered(2, undefined), remembered(1, [1])]).toEqual([
      2, 2, 2, 2,
    ]);
    expect(compute).toHaveBeenCalledTimes(2);
    remembered(3, []);
    expect(remembered(1, [1])).toBe(2);
    expect(compute).toHaveBeenCalledTimes(4);
  });

  it("does not remember rejected input", () => {
    const compute = jest.fn((): number => {
      throw new Error("no roof");
    });
    const remembered = memoizeLast(compute, 2);
    expect(() => remembered()).toThrow("no roof");
    expect(() => remembered()).toThrow("no roof");
    expect(compute).toHaveBeenCalledTimes(2);
  });
});
