import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { sheetOf } from "../../../xlsx/bookOf";

it("fits a row without a height in the file to its largest font, and saves no height for it", () => {
  const cells = sheetOf("Bid", {
    A1: { value: "Roof bid", style: "title" },
    B1: { value: "small", style: "usual" },
    A2: { value: "eave", style: "usual" },
    A3: { value: "Roof bid", style: "title" },
  });
  const book = {
    sheets: [{ ...cells, defaultRowPx: 20, rows: new Map([[2, { sizePx: 24 }]]) }],
    names: [],
    styles: new Map([
      ["title", { fs: 16 }],
      ["usual", { fs: 11 }],
    ]),
  };
  const engine = createHeadlessEngine([], book);
  const sheet = engine.workbook.getActiveSheet();
  expect([0, 1, 2].map((row) => sheet.getRowHeight(row))).toEqual([28, 20, 24]);
  expect([...(engine.book().sheets[0]?.rows ?? [])]).toEqual([[2, { sizePx: 24 }]]);
  engine.dispose();
});
