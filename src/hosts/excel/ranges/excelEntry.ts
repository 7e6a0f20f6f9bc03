/** Our one way into Office.js. Tests pass a stand-in instead of the global `Excel`. */
export type ExcelEntry = Pick<typeof Excel, "run">;
