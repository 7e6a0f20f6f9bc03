import fc from "fast-check";
import { call, callForNumber } from "../support/call";
import type { Matrix } from "../../shared/cell";

const rise = fc
  .double({ min: 0, max: 24, noNaN: true })
  .filter((value) => value === 0 || value > 1e-6)
  .map((value) => String(value))
  .filter((text) => !text.includes("e"));
const lengthFt = fc.double({ min: 0.01, max: 3000, noNaN: true });
const spacingIn = fc.double({ min: 0.25, max: 240, noNaN: true });
const wholeUpTo = (max: number) => fc.integer({ min: 1, max });

describe("laws of slope", () => {
  it("ANGLEPITCH undoes PITCHANGLE", () => {
    fc.assert(
      fc.property(rise, (pitch) => {
        expect(callForNumber("ANGLEPITCH", call("PITCHANGLE", pitch))).toBeCloseTo(Number(pitch), 9);
      }),
    );
  });

  it("ANGLEPITCH returns the steepest pitch exactly, and rejects anything steeper", () => {
    expect(call("ANGLEPITCH", call("PITCHANGLE", 24))).toBe(24);
    fc.assert(
      fc.property(fc.double({ min: 63.4, max: 63.434948822, noNaN: true }), (angle) => {
        const pitch = callForNumber("ANGLEPITCH", angle);
        expect(callForNumber("PITCHANGLE", pitch)).toBeCloseTo(angle, 9);
      }),
    );
  });

  it("SLOPECHECK treats a pitch converted to an angle and back as the same pitch", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), (pitch) => {
        const sameAgain = call("ANGLEPITCH", call("PITCHANGLE", pitch));
        expect(call("SLOPECHECK", sameAgain, pitch)).toBe(call("SLOPECHECK", pitch, pitch));
      }),
    );
  });

  it("RAFTERFACTOR grows with the pitch and is never below 1", () => {
    fc.assert(
      fc.property(rise, rise, (one, other) => {
        const [low, high] = [one, other].sort((a, b) => Number(a) - Number(b));
        const lowFactor = callForNumber("RAFTERFACTOR", low ?? "0");
        expect(lowFactor).toBeGreaterThanOrEqual(1);
        // Math.hypot may be off by one in the last digit.
        expect(callForNumber("RAFTERFACTOR", high ?? "0")).toBeGreaterThanOrEqual(lowFactor * (1 - 2 ** -52));
      }),
    );
  });

  it("a hip has one true length, whichever plane its run is measured on", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 24, noNaN: true }),
        fc.double({ min: 1, max: 24, noNaN: true }),
        lengthFt,
        (p, q, run) => {
          const otherRun = (run * p) / q;
          fc.pre(otherRun <= 30_000);
          const fromOne = callForNumber("HIPLENGTH", run, p, q);
          expect(callForNumber("HIPLENGTH", otherRun, q, p)).toBeCloseTo(fromOne, 6);
        },
      ),
    );
  });

  it("the hip's length on the face is the run up the slope over the sine of FACEANGLE", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 24, noNaN: true }),
        fc.double({ min: 1, max: 24, noNaN: true }),
        (p, q) => {
          const angle = (callForNumber("FACEANGLE", p, q) * Math.PI) / 180;
          const upTheSlope = callForNumber("RAFTERFACTOR", p);
          expect(upTheSlope / Math.sin(angle)).toBeCloseTo(callForNumber("HIPFACTOR", p, q), 9);
        },
      ),
    );
  });

  it("a hip bends less than a ridge of the same pitches", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 24, noNaN: true }),
        fc.double({ min: 1, max: 24, noNaN: true }),
        (p, q) => {
          expect(callForNumber("BENDANGLE", "hip", p, q)).toBeLessThan(
            callForNumber("BENDANGLE", "ridge", p, q),
          );
          expect(callForNumber("BENDANGLE", "valley", p, q)).toBe(callForNumber("BENDANGLE", "hip", p, q));
        },
      ),
    );
  });
});

describe("laws of counting", () => {
  it("counts exactly at multiples of any exposure", () => {
    fc.assert(
      fc.property(wholeUpTo(400), spacingIn, (courses, exposure) => {
        const slope = (courses * exposure) / 12;
        expect(callForNumber("COURSES", slope, exposure)).toBe(courses);
        expect(callForNumber("CLIPCOUNT", slope, exposure)).toBe(courses + 1);
        expect(callForNumber("NAILCOUNT", slope, exposure)).toBe(courses + 1);
        expect(callForNumber("TRIMPIECES", slope, exposure)).toBe(courses);
        expect(callForNumber("PACKS", slope * 12, exposure)).toBe(courses);
        expect(callForNumber("TOPCOURSE", slope, exposure)).toBe(exposure);
      }),
    );
  });

  it("no count is negative, however short the run", () => {
    const shortFt = fc.double({ min: 1e-12, max: 1e-6, noNaN: true });
    fc.assert(
      fc.property(shortFt, spacingIn, fc.constantFrom(0, 1, 2), (run, spacing, ends) => {
        const clips = callForNumber("CLIPCOUNT", run, spacing, ends);
        const nails = callForNumber("NAILCOUNT", run, spacing);
        const pieces = callForNumber("TRIMPIECES", run, spacing);
        const courses = callForNumber("COURSES", run, spacing);
        expect([clips, nails, pieces, courses]).toEqual(courses === 0 ? [0, 0, 0, 0] : [ends, 2, 1, 1]);
      }),
      { examples: [[1e-12, 12, 0]] },
    );
  });

  it("a longer slope never takes fewer courses, and the courses just cover it", () => {
    fc.assert(
      fc.property(lengthFt, lengthFt, spacingIn, (one, other, exposure) => {
        const [short, long] = one < other ? [one, other] : [other, one];
        const courses = callForNumber("COURSES", long, exposure);
        expect(courses).toBeGreaterThanOrEqual(callForNumber("COURSES", short, exposure));
        expect(courses * exposure).toBeGreaterThanOrEqual(long * 12 * (1 - 1e-8));
        expect((courses - 1) * exposure).toBeLessThan(long * 12);
      }),
    );
  });

  it("the top course never shows more than the exposure", () => {
    fc.assert(
      fc.property(lengthFt, spacingIn, (slope, exposure) => {
        expect(callForNumber("TOPCOURSE", slope, exposure)).toBeLessThanOrEqual(exposure);
      }),
    );
  });

  it("the last course line plus the top course equals the slope length", () => {
    fc.assert(
      fc.property(lengthFt, spacingIn, (slope, exposure) => {
        const last = callForNumber("COURSES", slope, exposure);
        const line = callForNumber("COURSELINE", last, exposure);
        expect(line + callForNumber("TOPCOURSE", slope, exposure) / 12).toBeCloseTo(slope, 6);
      }),
    );
  });

  it("pieces of trim minus their laps cover the run, and one piece fewer doesn't", () => {
    fc.assert(
      fc.property(
        lengthFt,
        fc.double({ min: 24, max: 240, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        (run, stock, lap) => {
          const pieces = callForNumber("TRIMPIECES", run, stock, lap);
          const reachOf = (count: number): number => count * stock - Math.max(0, count - 1) * lap;
          expect(reachOf(pieces)).toBeGreaterThanOrEqual(run * 12 * (1 - 1e-8));
          if (pieces > 1) expect(reachOf(pieces - 1)).toBeLessThan(run * 12 * (1 + 1e-8));
          expect(callForNumber("TRIMFEET", [[run]], lap, stock)).toBeCloseTo(
            run + ((pieces - 1) * lap) / 12,
            6,
          );
        },
      ),
    );
  });

  it("a starter list has as many starters as courses, and the sets cover them", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 100, noNaN: true }), wholeUpTo(6), (slope, steps) => {
        const pattern = Array.from({ length: steps }, (_, i) => String((i + 1) / steps)).join(",");
        const rows = call("STARTERLIST", slope, 12, 24, 0, 2, pattern, false) as Matrix;
        const pieces = rows.map((row) => row[5] as number);
        const courses = callForNumber("COURSES", slope, 12);
        expect(pieces.reduce((sum, each) => sum + each, 0)).toBe(courses);
        expect(callForNumber("STARTERSETS", slope, 12, pattern)).toBe(Math.max(...pieces));
      }),
    );
  });
});

describe("laws of measurements and outlines", () => {
  it("FEET reads what TAPE writes within half a mark", () => {
    fc.assert(
      fc.property(lengthFt, fc.constantFrom(8, 16, 32), (feet, marks) => {
        expect(Math.abs(callForNumber("FEET", call("TAPE", feet, marks)) - feet)).toBeLessThanOrEqual(
          0.5 / marks / 12 + 1e-9,
        );
      }),
    );
  });

  it("an outline's area doesn't depend on its winding, first corner, or place", () => {
    fc.assert(
      fc.property(
        lengthFt,
        lengthFt,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.nat(3),
        (eave, slope, share, turn) => {
          const corners = call("OUTLINE", "trapezoid", eave, slope, eave * share, undefined, false) as Matrix;
          const area = ((eave + eave * share) / 2) * slope;
          const turned = [...corners.slice(turn), ...corners.slice(0, turn)].map(([x, y]) => [
            (x as number) + 5,
            (y as number) - 3,
          ]);
          for (const variant of [corners, turned, [...turned].reverse()])
            expect(callForNumber("OUTLINEAREA", variant) / area).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe("laws of underlayment", () => {
  const rolls = (eave: number, slope: number, endLap = 4, wrap = 1): number =>
    callForNumber("UNDERLAYMENT", eave, slope, 36, 800, 2, endLap, wrap);
  const side = fc.double({ min: 0.1, max: 300, noNaN: true });

  it("a larger plane or a wider wrap never takes fewer rolls", () => {
    fc.assert(
      fc.property(side, side, side, (eave, slope, more) => {
        expect(rolls(eave + more, slope)).toBeGreaterThanOrEqual(rolls(eave, slope));
        expect(rolls(eave, slope + more)).toBeGreaterThanOrEqual(rolls(eave, slope));
        expect(rolls(eave, slope, 4, 6)).toBeGreaterThanOrEqual(rolls(eave, slope));
      }),
    );
  });

  it("the rolls always cover the plane after laps and wraps are deducted", () => {
    fc.assert(
      fc.property(side, side, (eave, slope) => {
        const coveredSqIn = rolls(eave, slope) * 800 * 36;
        expect(coveredSqIn).toBeGreaterThan((eave * 12 + 2) * (slope * 12 + 2) * (1 - 1e-9));
      }),
    );
  });
});
