import type { Matrix } from "../../../shared/cell";
import { call } from "../../support/call";

const cuts = (...args: Parameters<typeof call> extends [string, ...infer R] ? R : never): Matrix =>
  call("TRIMCUTS", ...args) as Matrix;

describe("cutting plans calculated by hand", () => {
  it("loses a lap at every joint: two pieces of 120 in reach 238 in, a third takes the rest", () => {
    expect(cuts(20, 120, 2).slice(1)).toEqual([
      [1, 120, `10' 0" run 1`, 0],
      [2, 120, `10' 0" run 1`, 0],
      [3, 120, `0' 4" run 1`, 116],
      ["total", 360, "proved fewest", 116],
    ]);
  });

  it("cuts no piece shorter than the shortest: the whole length next to it gives up the difference", () => {
    expect(cuts(20, 120, 2, 0, 12).slice(1)).toEqual([
      [1, 120, `10' 0" run 1`, 0],
      [2, 120, `9' 4" run 1`, 8],
      [3, 120, `1' 0" run 1`, 108],
      ["total", 360, "proved fewest", 116],
    ]);
  });

  it("takes a kerf with each cut, but none where a stock length is used up exactly", () => {
    expect(cuts([[5], [59.875 / 12]], 120, 0, `1/8"`).slice(1)).toEqual([
      [1, 120, `5' 0" run 1, 4' 11 7/8" run 2`, 0],
      ["total", 120, "proved fewest", 0],
    ]);
    expect(cuts([[5], [4]], 120, 0, `1/8"`)[1]).toEqual([1, 120, `5' 0" run 1, 4' 0" run 2`, 11.75]);
  });

  it("leaves the longest single left-over: 6 + 4 and 5, not 6 and 5 + 4", () => {
    expect(cuts([[6], [5], [4]], 120).slice(1)).toEqual([
      [1, 120, `6' 0" run 1, 4' 0" run 3`, 0],
      [2, 120, `5' 0" run 2`, 60],
      ["total", 240, "proved fewest", 60],
    ]);
  });

  it("buys the fewest of several lengths, and then the shortest total", () => {
    expect(cuts([[11], [9]], [[120], [144]]).slice(1)).toEqual([
      [1, 144, `11' 0" run 1`, 12],
      [2, 120, `9' 0" run 2`, 12],
      ["total", 264, "proved fewest", 24],
    ]);
  });

  it("uses more pieces only where the limits leave no other plan", () => {
    const twoRuns = [[20], [20]];
    const endless = cuts(twoRuns, [[144], [96]], 0, 0, 0, [[12], [8.5]], [[2], [null]]);
    expect(endless.at(-1)).toEqual(["total", 480, "proved cheapest", 0, 41]);
    // 96 + 96 + 48 in twice, the halves out of one length: five of 8.50; one of 144 in would cost 46.
    const oneLong = cuts(twoRuns, [[144], [96]], 0, 0, 0, [[12], [8.5]], [[1], [null]]);
    expect(oneLong.at(-1)).toEqual(["total", 480, "proved cheapest", 0, 42.5]);
  });

  it("uses no more pieces than the unlimited stock needs, however cheap a shorter stock is", () => {
    // One run of 144 in; the other of two pieces, 60 + 84. Three would cost 3.00.
    const limited = cuts(
      [[12], [12]],
      [[144], [120], [60]],
      0,
      0,
      0,
      [[20], [20], [1]],
      [[1], [null], [null]],
    );
    expect(limited.at(-1)?.at(-1)).toBe(41);
  });

  it("proves by length alone a plan with too many splits to search", () => {
    const many = [[120], [119], [118], [117], [116], [60]];
    expect(cuts([[79]], many, 0).at(-1)?.[2]).toBe("proved fewest");
    expect(cuts([[79], [0]], many, 0).at(-1)?.[2]).toBe("proved fewest");
  });

  it("uses more pieces of the shortest stock where all stock may run out", () => {
    expect(call("TRIMSTOCK", [[12], [12]], [[144], [96]], 0, 0, 0, null, [[1], [3]])).toBe(3);
  });

  it("plans up to 5000 pieces", () => {
    expect(call("TRIMSTOCK", [[5000]], 12, 0)).toBe(5000);
  });

  it("reads metric lengths without a remainder: three pieces of 2 m are 6 m", () => {
    expect(
      cuts([["2 m"], ["2 m"], ["2 m"]], "6 m")
        .at(-1)
        ?.slice(2),
    ).toEqual(["proved fewest", 0]);
  });
});
