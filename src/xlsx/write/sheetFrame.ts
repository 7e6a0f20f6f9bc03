import { a1, areaAddress, type Area, type CellAddress } from "../../workbook/address";
import type { BookSheet } from "../book/book";
import { parseRange } from "../book/a1References";
import { changeElement, insertInOrder, removeElement, SHEET_ORDER } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { childOf, type XmlPart } from "../xml/xml";
import { attributesText } from "../xml/xmlText";

/** A worksheet part, and the sheet before and now; `x` is the prefix of the part's elements. */
export interface SheetVersions {
  readonly part: XmlPart;
  readonly before: BookSheet;
  readonly now: BookSheet;
  readonly x: string;
}

const paneText = (rows: number, columns: number, x: string): string => {
  const active = rows > 0 && columns > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
  return `<${x}pane${attributesText({
    xSplit: columns === 0 ? undefined : columns,
    ySplit: rows === 0 ? undefined : rows,
    topLeftCell: a1({ row: rows, column: columns }),
    activePane: active,
    state: "frozen",
  })}/>`;
};

export const mergesChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  const same = JSON.stringify([...before.merges].sort()) === JSON.stringify([...now.merges].sort());
  if (same) return [];
  const { root } = part;
  const old = childOf(root, "mergeCells");
  const { merges } = now;
  const text =
    merges.length === 0
      ? ""
      : `<${x}mergeCells count="${merges.length}">${merges.map((ref) => `<${x}mergeCell${attributesText({ ref })}/>`).join("")}</${x}mergeCells>`;
  return old ? [{ ...removeElement(old), text }] : [insertInOrder(root, SHEET_ORDER, "mergeCells", text)];
};

export const frozenChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  const { rows, columns } = now.frozen;
  if (rows === before.frozen.rows && columns === before.frozen.columns) return [];
  const { source, root } = part;
  const pane = rows + columns === 0 ? "" : paneText(rows, columns, x);
  const view = childOf(childOf(root, "sheetViews"), "sheetView");
  if (!view)
    return [
      insertInOrder(
        root,
        SHEET_ORDER,
        "sheetViews",
        `<${x}sheetViews><${x}sheetView workbookViewId="0">${pane}</${x}sheetView></${x}sheetViews>`,
      ),
    ];
  const gone = view.children.filter(({ name }) => name === "pane" || name === "selection").map(removeElement);
  const rest = [...gone, { start: view.innerStart, end: view.innerStart, text: pane }];
  if (view.innerStart === view.end) return [changeElement(source, view, { append: pane })];
  return [changeElement(source, view, { inside: rest })];
};

/** Extends the used range that the part states to the cells that were added outside it. */
export const dimensionChanges = ({ part }: SheetVersions, touched: readonly CellAddress[]): Splice[] => {
  const element = childOf(part.root, "dimension");
  const range = parseRange(element?.attributes.get("ref") ?? "");
  if (!element || !range || touched.length === 0) return [];
  // One by one: as arguments of Math.max, a large sheet's cells would be more than the browser takes.
  const { from, to } = touched.reduce(
    (area, { row, column }): Area => ({
      from: { row: Math.min(area.from.row, row), column: Math.min(area.from.column, column) },
      to: { row: Math.max(area.to.row, row), column: Math.max(area.to.column, column) },
    }),
    range,
  );
  const ref = areaAddress({ from, to });
  return ref === areaAddress(range) ? [] : [changeElement(part.source, element, { attributes: { ref } })];
};

/** The file's own protection stays. */
export const protectionChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  if (!now.isProtected || before.isProtected) return [];
  const text = `<${x}sheetProtection sheet="1" objects="1" scenarios="1" formatColumns="0" formatRows="0"/>`;
  return [insertInOrder(part.root, SHEET_ORDER, "sheetProtection", text)];
};
