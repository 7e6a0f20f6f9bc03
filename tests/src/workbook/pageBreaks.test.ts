import { planBook } from "../../../src/xlsx/planBook";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { LEVELS } from "../../../functions/practice/level";
import { pageBreaks } from "../../../src/workbook/pageBreaks";
import { PAPER_PX } from "../../../src/workbook/pageSetup";
import { answerKeySheet } from "../../../src/practice/sheets/answerKeySheet";
import { ALL_TOPICS, classOf } from "../../support/practiceClass";

/** As wide as the paper, so that rows are printed as high as they are: 20 pixels, 44 to a page. */
const sizes = { columnWidths: [PAPER_PX.width], rowHeights: {} };

test.each([
  ["blocks that fit on a page stay on it", [4, 14, 24], 34, []],
  ["the one that would be torn begins the next page", [4, 14, 30], 50, [30]],
  ["what goes on over a page's end leaves less room behind it", [0, 60, 80], 100, [80]],
  ["a block of more than a page begins a page of its own", [0, 10, 70], 80, [10]],
  ["no block, no break", [], 200, []],
])("%s", (_, starts, endRow, breaks) => {
  expect(pageBreaks(starts, endRow, sizes)).toEqual(breaks);
});

test("rows that are higher, or wide columns, which are printed smaller, change what fits", () => {
  const starts = [4, 14, 24, 34];
  expect(pageBreaks(starts, 44, { ...sizes, rowHeights: { 5: 200 } })).toEqual([34]);
  expect(pageBreaks([...starts, 44], 54, { ...sizes, columnWidths: [800] })).toEqual([]);
});

test("a key's pages begin with problems, in its file too", () => {
  for (const level of LEVELS) {
    const units = "feet and inches";
    const version = { seed: "1", version: 0, level, units, set: ALL_TOPICS } as const;
    const key = answerKeySheet(classOf(1, level, units), version);
    const begins = key.pageBreaksBefore?.map((row) => key.cells.find((cell) => cell.row === row));
    expect(begins?.length).toBeGreaterThan(2);
    expect(begins?.map((cell) => cell?.style)).toEqual(begins?.map(() => "section"));
    const { parts } = openXlsx(saveXlsx(undefined, planBook([key])));
    const part = new TextDecoder().decode(parts.get("xl/worksheets/sheet1.xml"));
    expect([...part.matchAll(/<brk id="(\d+)"/g)].map(([, row]) => Number(row))).toEqual(
      key.pageBreaksBefore,
    );
  }
});
