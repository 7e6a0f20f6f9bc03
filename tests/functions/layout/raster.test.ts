import fc from "fast-check";
import { layOut } from "../../../functions/layout/engine/layOut";
import { SIDES } from "../../../shared/layoutStart";
import { countedBy, expectSameCount, type Counted } from "../../support/countedPiece";
import { panelOf } from "../../support/layouts";
import { mostPairs } from "../../support/mostPairs";
import { rasterCount } from "../../support/rasterCount";
import { steppedFaces } from "../../support/steppedFaces";

const KEEPS = { left: "near", right: "far", both: "both", none: "neither" } as const;

/** A count made from the right sees left as right. */
const swapped = (counted: Counted): Counted => ({
  ...counted,
  pieces: counted.pieces.map((piece) => ({
    ...piece,
    keepsLock: { left: "right", right: "left" }[piece.keepsLock] ?? piece.keepsLock,
  })),
});

const layouts = fc.record({
  face: steppedFaces,
  widthIn: fc.integer({ min: 3, max: 11 }),
  heightIn: fc.integer({ min: 2, max: 6 }),
  setbackIn: fc.integer({ min: 0, max: 2 }),
  foldIn: fc.integer({ min: 0, max: 2 }),
  cutLossIn: fc.constantFrom(0, 0.125, 1),
  lockLossIn: fc.constantFrom(0, 0.5),
  steps: fc.array(fc.integer({ min: 1, max: 11 }), { minLength: 1, maxLength: 4 }),
  shiftIn: fc.integer({ min: 0, max: 11 }),
  firstStep: fc.nat({ max: 3 }),
  side: fc.constantFrom(...SIDES),
});

describe("a layout, against one that fills the face square inch by square inch", () => {
  it("finds the same pieces, blanks, locks and panels on 3000 stepped faces with openings", () => {
    fc.assert(
      fc.property(layouts, ({ face, side, shiftIn, firstStep, ...sizes }) => {
        const { widthIn, heightIn, setbackIn, foldIn, cutLossIn, lockLossIn } = sizes;
        const steps = sizes.steps.map((step) => Math.min(step, widthIn));
        const step = (firstStep % steps.length) + 1;
        const panel = panelOf({
          "exposed width": widthIn,
          "exposed height": heightIn,
          "gable setback": setbackIn,
          "gable fold": foldIn,
          "cut loss": cutLossIn,
          "lock loss": lockLossIn,
          "stagger pattern": steps.map((each) => `${each}/${widthIn}`).join(", "),
        });
        const layout = layOut(face, panel, { side, shiftIn, step }, true);

        const squares = side === "left" ? face.squares : face.squares.map((row) => [...row].reverse());
        const seen = rasterCount(squares, { widthIn, heightIn, setbackIn, foldIn }, (course) => {
          const past = ((steps[(course + step - 2) % steps.length] ?? 0) + shiftIn) % widthIn;
          return past === 0 ? widthIn : past;
        });
        const counted = side === "left" ? seen : swapped(seen);
        expectSameCount(countedBy(layout), counted, 1e-9);

        const reusable = counted.pieces.map(({ blankIn, keepsLock }) => ({
          blankIn,
          keeps: KEEPS[keepsLock as keyof typeof KEEPS],
        }));
        const whole = counted.wholeByCourse.reduce((sum, each) => sum + each, 0);
        const pairs = mostPairs(reusable, widthIn - cutLossIn - lockLossIn);
        expect(layout.panels).toBe(whole + reusable.length - pairs);
      }),
      { numRuns: 3000 },
    );
  });
});
