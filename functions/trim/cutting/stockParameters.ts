import { column } from "../../../shared/kinds/column";
import { lengthInFeet, lengthInInches } from "../../../shared/kinds/length";
import { count, money } from "../../../shared/kinds/number";
import { omittable, optional, required } from "../../../shared/spec/spec";

/** Keeps total costs exact in floating point. */
const HIGHEST_PRICE = 100_000;

/** The parameters that TRIMSTOCK and TRIMCUTS share. */
export const STOCK_PARAMETERS = [
  required(
    "lengthsFt",
    column(lengthInFeet(), "a range of lengths in feet, or of text such as 18' 6 1/2\""),
    "The runs, one per cell.",
  ),
  required(
    "stockIn",
    column(lengthInInches({ moreThan: 0 }), "a length in inches such as 120, or a range of several"),
    "Length of one piece as sold; a range if it comes in several lengths.",
  ),
  omittable(
    "lapIn",
    lengthInInches(),
    "Overlap where two pieces of a run meet; 0 if they butt. If left out, no run may have a joint.",
  ),
  optional("kerfIn", lengthInInches(), "Width of the saw cut.", 0),
  optional("shortestIn", lengthInInches(), "Shortest piece allowed in a run that has joints.", 0),
  omittable(
    "prices",
    column(money({ moreThan: 0, atMost: HIGHEST_PRICE }), "a range of prices, one for each stock length"),
    "Price of one piece of each stock length. With prices, the plan has the lowest cost.",
  ),
  omittable(
    "limits",
    column(count({ atLeast: 0 }), "a range of whole numbers, one for each stock length"),
    "How many of each stock length are available; blank for no limit.",
  ),
] as const;
