/** The rows of a signed order sheet, counted from 0. */
export const SEAL_ROWS = { signed: 2, now: 3, status: 4 } as const;
export const VALUE_COLUMN = 1;
/** The sealed block begins here; the order's headings follow. */
export const FACT_ROWS = { job: 6, date: 7, from: 8, madeBy: 9 } as const;
export const ORDER_HEADING_ROW = 11;

export const SEAL_LABELS = {
  signed: "Seal as signed",
  now: "Seal of the cells now",
  status: "Status",
} as const;
export const FACT_LABELS = { job: "Job", date: "Date", from: "Order", madeBy: "Made by" } as const;

export const AS_SIGNED = "as signed";
export const EDITED = "edited since";

export const MEASUREMENT_HEADINGS = ["Sheet", "Row", "Measure", "Unit", "Value", "Input or result"] as const;
export const MEASUREMENT_COLUMNS = { sheet: 0, row: 1, heading: 2, unit: 3, value: 4, kind: 5 } as const;
