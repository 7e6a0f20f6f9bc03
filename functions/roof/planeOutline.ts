import { InputError } from "../../shared/inputError";
import { count } from "../../shared/kinds/number";
import type { Outline } from "../../shared/outline";
import { FEET_RESULT } from "../../shared/result";
import { defineTable, required } from "../../shared/spec/spec";
import { faceOutline } from "./roofMeasures";
import type { Roof } from "./roofParts";
import { FOOTPRINT, GABLES, OVERHANG, PITCH, RAKE_OVERHANG, roofOf } from "./roofParameters";

/** The outline of one plane on its sloped face. */
export const planeOutline = ({ planes }: Roof, number: number): Outline => {
  const plane = planes[number - 1];
  if (!plane) throw new InputError(`plane must be a plane of the roof, 1 to ${planes.length}, got ${number}`);
  return faceOutline(plane);
};

export const planeOutlineSpec = defineTable({
  id: "PLANEOUTLINE",
  concept: "roof",
  summary:
    "The corners of one plane of the roof over a footprint, in feet on the slope, with the eave along y = 0.",
  parameters: [
    FOOTPRINT,
    PITCH,
    required("plane", count(), "Number of the plane in the ROOFPLANES table."),
    GABLES,
    OVERHANG,
    RAKE_OVERHANG,
  ],
  columns: [
    { heading: "x (ft)", result: FEET_RESULT },
    { heading: "y (ft)", result: FEET_RESULT },
  ],
  formula: "the plane laid flat, corners counterclockwise from the left end of its lowest edge",
  source: "plane geometry",
  examples: [
    {
      args: [
        [
          [0, 0],
          [40, 0],
          [40, 24],
          [0, 24],
        ],
        9,
        3,
      ],
      result: [
        ["x (ft)", "y (ft)"],
        [0, 0],
        [40, 0],
        [28, 15],
        [12, 15],
      ],
      from: "the long side of a hip roof: 12 ft of run is 15 ft up the slope at 9 in 12",
    },
  ],
  calculate: (corners, pitches, plane, gables, overhangsFt, rakeOverhangsFt) =>
    planeOutline(roofOf(corners, pitches, gables, overhangsFt, rakeOverhangsFt), plane).map(({ x, y }) => [
      x,
      y,
    ]),
});
