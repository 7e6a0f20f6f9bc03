/** The one entry of Office.js that we use; a test passes a stand-in and touches no global. */
export type ExcelEntry = Pick<typeof Excel, "run">;
