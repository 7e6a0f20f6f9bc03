import { SQ_M_PER_SQ_FT } from "../../../functions/practice/answerUnits";
import type { Measuring } from "../../../functions/practice/measuring";
import { withShown } from "../commonMistakes";
import type { Answer, Mistake } from "../topic";

export const inAreaUnit = (areaSqFt: number, { units }: Measuring): number =>
  units === "metric" ? areaSqFt * SQ_M_PER_SQ_FT : areaSqFt;
export const sqFtOf = (area: number, { units }: Measuring): number =>
  units === "metric" ? area / SQ_M_PER_SQ_FT : area;
export const areaUnit = ({ units }: Measuring): string => (units === "metric" ? "m²" : "sq ft");

/** Lengths read to the tape's marks and a factor of three decimals leave this much doubt, as a fraction of the area. */
const AREA_TOLERANCE = 0.005;

export const writeArea = (areaSqFt: number, measuring: Measuring): string =>
  `${inAreaUnit(areaSqFt, measuring).toFixed(1)} ${areaUnit(measuring)}`;

export const areaAnswer = (
  label: string,
  areaSqFt: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "area", unit: areaUnit(measuring), format: "one decimal" },
  value: areaSqFt,
  shown: writeArea(areaSqFt, measuring),
  tolerance: areaSqFt * AREA_TOLERANCE,
  why: "0.5 %: the slope length and the factor are rounded",
  mistakes: withShown(mistakes, (each) => writeArea(each, measuring)),
});
