import { lengthInFeet } from "../../shared/kinds/length";
import { metal } from "../../shared/kinds/metal";
import { quantity } from "../../shared/kinds/number";
import { METAL_SOURCES, type Metal } from "../../shared/metals";
import { INCHES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { feetToInches } from "../../shared/units";

/** No metal on a roof warms or cools by more. */
const LARGEST_CHANGE_F = 500;

/** How much longer a piece gets when it warms, in inches; negative when it cools. */
export const thermalMove = (
  lengthFt: number,
  temperatureChangeF: number,
  { expansionPerDegreeF }: Metal,
): number => feetToInches(lengthFt) * expansionPerDegreeF * temperatureChangeF + 0;

export const thermalMoveSpec = defineFunction({
  id: "THERMALMOVE",
  concept: "trim",
  summary: "How much a piece of metal grows or shrinks with the temperature.",
  parameters: [
    required("lengthFt", lengthInFeet(), "Length of the piece."),
    required(
      "temperatureChangeF",
      quantity("°F", { atLeast: -LARGEST_CHANGE_F, atMost: LARGEST_CHANGE_F }),
      "Temperature rise in °F; negative if it gets colder.",
    ),
    required("metal", metal, "The metal."),
  ],
  heading: "Thermal move (in)",
  result: INCHES_RESULT,
  formula: "length × expansion per °F × temperature change",
  source: METAL_SOURCES,
  examples: [
    { args: [10, 100, "copper"], result: 0.1176, from: "120 in × 0.0000098 × 100" },
    {
      args: ["8 m", 180, "zinc"],
      result: 17.6 / 25.4,
      from: "a published gutter of 8 m over 100 K: 0.022 × 8 × 100 = 17.6 mm",
    },
  ],
  calculate: thermalMove,
});
