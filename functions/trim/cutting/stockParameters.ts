import { column } from "../../../shared/kinds/column";
import { lengthInFeet, lengthInInches } from "../../../shared/kinds/length";
import { count, money } from "../../../shared/kinds/number";
import { omittable, optional, required } from "../../../shared/spec/spec";

/** So that the least cost stays exact. */
const HIGHEST_PRICE = 100_000;

/** What both functions of a cutting plan ask for. */
export const STOCK_PARAMETERS = [
  required(
    "lengthsFt",
    column(lengthInFeet(), "a range of lengths in feet, or of text such as 18' 6 1/2\""),
    "The runs, one a cell.",
  ),
  required(
    "stockIn",
    column(lengthInInches({ moreThan: 0 }), "a length in inches such as 120, or a range of several"),
    "Length of a piece as it is bought; a range where it comes in several.",
  ),
  omittable(
    "lapIn",
    lengthInInches(),
    "Where two pieces of a run meet, 0 where they butt; left out, no run may have a joint.",
  ),
  optional("kerfIn", lengthInInches(), "What the saw takes with each cut.", 0),
  optional("shortestIn", lengthInInches(), "No piece of a run with joints is shorter.", 0),
  omittable(
    "prices",
    column(money({ moreThan: 0, atMost: HIGHEST_PRICE }), "a range of prices, one beside each stock length"),
    "Of one piece of each stock length: the plan is then the cheapest.",
  ),
  omittable(
    "limits",
    column(count({ atLeast: 0 }), "a range of whole numbers, one beside each stock length"),
    "How many there are of each stock length; blank where there is no end of them.",
  ),
] as const;
