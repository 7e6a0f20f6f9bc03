import { callForNumber } from "../support/call";

describe("deck against published figures", () => {
  it("36 in felt with a head lap of 19 in has a 17 in exposure (NAVEDTRA 14044): every 17 in adds one course", () => {
    const rollsOf = (slopeIn: number): number =>
      callForNumber("UNDERLAYMENT", 10, slopeIn / 12, 36, 120, 19, 0, 0);
    expect([36, 37, 53, 54].map(rollsOf)).toEqual([1, 2, 2, 3]);
  });

  it("a wrap of 1 in over every edge adds 2 in each way (common practice)", () => {
    expect(callForNumber("UNDERLAYMENT", 10, 3, 36, 120, 0, 0, 0)).toBe(1);
    expect(callForNumber("UNDERLAYMENT", 10, 3, 36, 122, 0, 0, 1)).toBe(2);
    expect(callForNumber("UNDERLAYMENT", 10, 34 / 12, 36, 122, 0, 0, 1)).toBe(1);
  });

  it("the sheet reaches 24 in inside the wall line, measured level (IRC R905.1.2)", () => {
    const reachIn = (pitch: number, overhang: number, wall: number): number => {
      const [least] = Array.from({ length: 2000 }, (_, tenths) => tenths / 10)
        .slice(1)
        .filter((width) => callForNumber("ICEBARRIER", pitch, overhang, wall, width, 0) === 1);
      return least ?? NaN;
    };
    expect(reachIn(0, 12, 0)).toBe(36);
    expect(reachIn(9, 12, 0)).toBe(45);
    expect(reachIn(9, 12, 4)).toBe(50);
  });

  it("from 8 in 12 up it reaches 36 in along the slope (IRC R905.1.2, 2015 edition on); lower pitches have no such rule", () => {
    expect(callForNumber("ICEBARRIER", 8, 0, 0, 35.9, 0)).toBe(2);
    expect(callForNumber("ICEBARRIER", 8, 0, 0, 36, 0)).toBe(1);
    expect(callForNumber("ICEBARRIER", 7.9, 0, 0, 30, 0)).toBe(1);
    expect(callForNumber("ICEBARRIER", 12, 0, 0, 35.9, 0)).toBe(2);
    expect(callForNumber("ICEBARRIER", 12, 0, 0, 36, 0)).toBe(1);
  });

  it("1500 sq ft of ceiling take 10 sq ft of vent at 1/150, 600 sq ft 288 sq in at 1/300 (IRC R806.2; published examples)", () => {
    expect(callForNumber("VENTAREA", 1500) / 144).toBeCloseTo(10, 12);
    expect(callForNumber("VENTAREA", 600, true)).toBeCloseTo(288, 12);
  });
});
