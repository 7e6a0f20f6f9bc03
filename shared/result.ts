/** What a function's answer is: for help, and for the number format of the cell that it goes into. */
export interface ResultKind {
  readonly unit: string;
  readonly numberFormat: string;
}

const result = (unit: string, numberFormat: string): ResultKind => ({ unit, numberFormat });

export const countOf = (things: string): ResultKind => result(things, "#,##0");
export const FEET_RESULT = result("ft", "#,##0.00");
export const INCHES_RESULT = result("in", "0.00");
export const DEGREES_RESULT = result("degrees", "0.00");
export const RISE_RESULT = result("in 12", "0.00");
export const RATIO_RESULT = result("ratio", "0.0000");
export const SQ_FT_RESULT = result("sq ft", "#,##0.0");
export const SQ_IN_RESULT = result("sq in", "#,##0");
export const POUNDS_RESULT = result("lb", "#,##0.00");
export const LB_PER_SQ_FT_RESULT = result("lb per sq ft", "0.000");
export const SQUARES_RESULT = result("squares", "#,##0.00");
export const MONEY_RESULT = result("", "#,##0.00");
/** A number of any unit, or text. */
export const VALUE_RESULT = result("value", "General");
export const TEXT_RESULT = result("text", "General");
