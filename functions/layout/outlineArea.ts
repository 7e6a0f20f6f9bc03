import { outline } from "../../shared/kinds/outline";
import { twiceSignedArea, type Outline } from "../../shared/outline";
import { SQ_FT_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";

/** The area inside an outline, whichever way its corners run. */
export const outlineArea = (corners: Outline): number => Math.abs(twiceSignedArea(corners)) / 2;

export const outlineAreaSpec = defineFunction({
  id: "OUTLINEAREA",
  concept: "layout",
  summary: "Area of a roof face from its corners.",
  parameters: [
    required("outline", outline, "Two columns, x and y in feet on the slope, one row per corner."),
  ],
  heading: "Area (sq ft)",
  result: SQ_FT_RESULT,
  formula: "½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|, the shoelace formula",
  source: "plane geometry (Meister 1769, Gauss)",
  examples: [
    {
      args: [
        [
          [0, 0],
          [40, 0],
          [28, 15],
          [12, 15],
        ],
      ],
      result: 420,
      from: "(40 + 16) ÷ 2 × 15",
    },
  ],
  calculate: outlineArea,
});
