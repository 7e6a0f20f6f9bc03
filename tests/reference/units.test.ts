import { callForNumber } from "../support/call";

/** 1 ft = 0.3048 m exactly (NIST, "U.S. Survey Foot"); 1 in = 25.4 mm exactly (NIST SP 811 Appendix B, from memory). */
describe("exact units", () => {
  it("a foot is 0.3048 m", () => {
    expect(callForNumber("FEET", "0.3048 m")).toBeCloseTo(1, 15);
    expect(callForNumber("FEET", "304.8 mm")).toBeCloseTo(1, 15);
    expect(callForNumber("FEET", "30.48 cm")).toBeCloseTo(1, 15);
  });

  it("an inch is 25.4 mm", () => {
    expect(callForNumber("INCHES", "25.4 mm")).toBeCloseTo(1, 14);
    expect(callForNumber("INCHES", "1 m")).toBeCloseTo(39.37007874, 8);
  });
});
