import { LAST_CELL } from "../../workbook/address";
import { PAGE_SETUP } from "../../workbook/pageSetup";
import { insertInOrder, SHEET_ORDER } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { attributesText } from "../xml/xmlText";
import type { SheetVersions } from "./sheetFrame";

/** 0 in a file means as many pages as needed. */
const ANY_NUMBER = 0;

const breaksText = ({ now, x }: SheetVersions): string => {
  const breaks = (now.breaksBefore ?? []).map(
    (row) => `<${x}brk${attributesText({ id: row, max: LAST_CELL.column, man: 1 })}/>`,
  );
  const counts = { count: breaks.length, manualBreakCount: breaks.length };
  return breaks.length === 0
    ? ""
    : `<${x}rowBreaks${attributesText(counts)}>${breaks.join("")}</${x}rowBreaks>`;
};

export const pageSetupChanges = (versions: SheetVersions): Splice[] => {
  const { part, before, now, x } = versions;
  if (!now.print || before.print) return [];
  const { root } = part;
  const { orientation, pagesHigh = ANY_NUMBER } = PAGE_SETUP[now.print];
  return [
    insertInOrder(
      root,
      SHEET_ORDER,
      "sheetPr",
      `<${x}sheetPr><${x}pageSetUpPr fitToPage="1"/></${x}sheetPr>`,
    ),
    insertInOrder(
      root,
      SHEET_ORDER,
      "pageSetup",
      `<${x}pageSetup${attributesText({ orientation, fitToWidth: 1, fitToHeight: pagesHigh })}/>`,
    ),
    insertInOrder(root, SHEET_ORDER, "rowBreaks", breaksText(versions)),
  ];
};
