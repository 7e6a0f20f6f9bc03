import { InputError } from "../../shared/inputError";
import { choice } from "../../shared/kinds/choice";
import { lengthInFeet, signedLengthInFeet } from "../../shared/kinds/length";
import { FEET_RESULT } from "../../shared/result";
import { isSame } from "../../shared/rounding";
import { defineTable, omittable, required } from "../../shared/spec/spec";
import type { Outline } from "../../shared/outline";

const SHAPES = ["rectangle", "triangle", "trapezoid", "parallelogram"] as const;
type Shape = (typeof SHAPES)[number];

/** The length of the top edge of the face; only a trapezoid has one of its own. */
const topOf = (shape: Shape, eaveFt: number, topFt: number | undefined): number => {
  if (shape === "trapezoid") {
    if (topFt === undefined)
      throw new InputError("top is missing: a trapezoid needs the length of its top edge in ft");
    return topFt;
  }
  const ownTopFt = shape === "triangle" ? 0 : eaveFt;
  if (topFt !== undefined && !isSame(topFt, ownTopFt))
    throw new InputError(`top must be left out for a ${shape}, or be ${ownTopFt} ft, got ${topFt}`);
  return ownTopFt;
};

/** How far the left end of the top edge is to the right of the left end of the eave. */
const leanOf = (shape: Shape, eaveFt: number, topFt: number, leanFt: number | undefined): number => {
  if (shape === "rectangle" && leanFt !== undefined && !isSame(leanFt, 0))
    throw new InputError(`lean must be left out for a rectangle, got ${leanFt}; a parallelogram leans`);
  if (shape === "parallelogram" && leanFt === undefined)
    throw new InputError(
      "lean is missing: a parallelogram needs the distance in ft that its top is to the right of its eave",
    );
  return leanFt ?? (eaveFt - topFt) / 2;
};

/** The corners of a common face, counterclockwise from the left end of the eave, with the eave along y = 0. */
export const outline = (
  shape: Shape,
  eaveFt: number,
  slopeLengthFt: number,
  topFt?: number,
  leanFt?: number,
): Outline => {
  const ownTopFt = topOf(shape, eaveFt, topFt);
  const ownLeanFt = leanOf(shape, eaveFt, ownTopFt, leanFt);
  const eave = [
    { x: 0, y: 0 },
    { x: eaveFt, y: 0 },
  ];
  const topLeft = { x: ownLeanFt, y: slopeLengthFt };
  return ownTopFt === 0
    ? [...eave, topLeft]
    : [...eave, { x: ownLeanFt + ownTopFt, y: slopeLengthFt }, topLeft];
};

export const outlineSpec = defineTable({
  id: "OUTLINE",
  concept: "layout",
  summary: "The corners of a common roof face, in feet on the slope, with the eave along y = 0.",
  parameters: [
    required("shape", choice(SHAPES), "rectangle, triangle, trapezoid or parallelogram."),
    required("eaveFt", lengthInFeet({ moreThan: 0 }), "Length along the eave."),
    required("slopeLengthFt", lengthInFeet({ moreThan: 0 }), "Length up the slope, square to the eave."),
    omittable("topFt", lengthInFeet(), "Length along the top edge; a trapezoid needs it."),
    omittable(
      "leanFt",
      signedLengthInFeet,
      "How far the left end of the top is to the right of the left end of the eave; centered if left out.",
    ),
  ],
  columns: [
    { heading: "x (ft)", result: FEET_RESULT },
    { heading: "y (ft)", result: FEET_RESULT },
  ],
  formula: "corners counterclockwise from the left end of the eave",
  source: "plane geometry",
  examples: [
    {
      args: ["trapezoid", 40, 15, 16],
      result: [
        ["x (ft)", "y (ft)"],
        [0, 0],
        [40, 0],
        [28, 15],
        [12, 15],
      ],
      from: "the top centered: (40 − 16) ÷ 2 = 12",
    },
  ],
  calculate: (...values) => outline(...values).map(({ x, y }) => [x, y]),
});
