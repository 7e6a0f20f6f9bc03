import { a1, LAST_CELL, type Area, type CellAddress } from "../../workbook/address";
import type { InputPrompt } from "../../workbook/printableSheet";
import { PAGE_SETUP } from "../../workbook/pageSetup";
import type { BookSheet, DropDown } from "../book/book";
import { parseRange, rangeText } from "../book/a1References";
import { changeElement, insertInOrder, removeElement, SHEET_ORDER } from "../xml/elementOrder";
import { columnWidth } from "../styles/sizes";
import type { Splice } from "../xml/splices";
import { childOf, childrenOf, numberAttribute, type XmlPart } from "../xml/xml";
import { attributesText, escapeXml } from "../xml/xmlText";

/** A sheet's part, what it held and what it is to hold; x is the prefix of the part's elements. */
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

export const columnsChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  const numbers = [...new Set([...before.columns.keys(), ...now.columns.keys()])];
  const changed = numbers.filter((column) => {
    const was = before.columns.get(column);
    const is = now.columns.get(column);
    return was?.sizePx !== is?.sizePx || (was?.isHidden ?? false) !== (is?.isHidden ?? false);
  });
  if (changed.length === 0) return [];
  const { root } = part;
  const list = childOf(root, "cols");
  const pieces: { min: number; max: number; attributes: Record<string, string | undefined> }[] = [];
  for (const element of childrenOf(list, "col")) {
    const min = numberAttribute(element, "min") ?? 1;
    const max = numberAttribute(element, "max") ?? min;
    const cuts = [min, ...changed.flatMap((column) => [column + 1, column + 2]), max + 1].filter(
      (at) => at >= min && at <= max + 1,
    );
    const sorted = [...new Set(cuts)].sort((a, b) => a - b);
    for (let at = 0; at + 1 < sorted.length; at++)
      pieces.push({
        min: sorted[at] ?? min,
        max: (sorted[at + 1] ?? max + 1) - 1,
        attributes: Object.fromEntries(element.attributes),
      });
  }
  for (const column of changed) {
    const is = now.columns.get(column);
    let piece = pieces.find(({ min, max }) => min === column + 1 && max === column + 1);
    if (!piece) pieces.push((piece = { min: column + 1, max: column + 1, attributes: {} }));
    piece.attributes = {
      ...piece.attributes,
      width: is?.sizePx === undefined ? piece.attributes["width"] : String(columnWidth(is.sizePx)),
      customWidth: is?.sizePx === undefined ? piece.attributes["customWidth"] : "1",
      hidden: is?.isHidden ? "1" : undefined,
    };
  }
  const text = pieces
    .filter(
      ({ attributes }) =>
        attributes["width"] !== undefined ||
        attributes["hidden"] !== undefined ||
        attributes["style"] !== undefined,
    )
    .sort((a, b) => a.min - b.min)
    .map(({ min, max, attributes }) => `<${x}col${attributesText({ ...attributes, min, max })}/>`)
    .join("");
  const whole = text === "" ? "" : `<${x}cols>${text}</${x}cols>`;
  return list
    ? [{ start: list.start, end: list.end, text: whole }]
    : [insertInOrder(root, SHEET_ORDER, "cols", whole)];
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

const dropDownText = ({ ranges, choices }: DropDown, x: string): string => {
  const attributes = attributesText({
    type: "list",
    errorStyle: "warning",
    allowBlank: 1,
    showErrorMessage: 1,
    sqref: ranges.join(" "),
  });
  return `<${x}dataValidation${attributes}><${x}formula1>${escapeXml(`"${choices.join(",").replaceAll('"', '""')}"`)}</${x}formula1></${x}dataValidation>`;
};

/** Whatever is typed may be a number or a tape's text, so all that is asked is a digit in it. */
const entryText = ({ at, title, prompt }: InputPrompt, x: string): string => {
  const attributes = attributesText({
    type: "custom",
    errorStyle: "warning",
    allowBlank: 1,
    showInputMessage: 1,
    showErrorMessage: 1,
    errorTitle: "Not a number",
    error: "This has no digits. Keep it?",
    promptTitle: title,
    prompt,
    sqref: a1(at),
  });
  const hasDigit = `SUMPRODUCT(--ISNUMBER(FIND(ROW($1:$10)-1,${a1(at)})))>0`;
  return `<${x}dataValidation${attributes}><${x}formula1>${escapeXml(hasDigit)}</${x}formula1></${x}dataValidation>`;
};

export const validationChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  const known = new Set(before.dropDowns.map((each) => JSON.stringify(each)));
  const added = [
    ...now.dropDowns.filter((each) => !known.has(JSON.stringify(each))).map((each) => dropDownText(each, x)),
    ...(now.entries ?? []).map((entry) => entryText(entry, x)),
  ];
  if (added.length === 0) return [];
  const { source, root } = part;
  const text = added.join("");
  const old = childOf(root, "dataValidations");
  if (old)
    return [
      changeElement(source, old, {
        attributes: { count: String(old.children.length + added.length) },
        append: text,
      }),
    ];
  return [
    insertInOrder(
      root,
      SHEET_ORDER,
      "dataValidations",
      `<${x}dataValidations count="${added.length}">${text}</${x}dataValidations>`,
    ),
  ];
};

/** The sheet's used range, where cells were added outside of it. */
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
  const ref = rangeText({ from, to });
  return ref === rangeText(range) ? [] : [changeElement(part.source, element, { attributes: { ref } })];
};

/** How a file says that as many pages are taken as it takes. */
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

export const pageChanges = (versions: SheetVersions): Splice[] => {
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

/** A file's own protection stays as it is. */
export const protectionChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
  if (!now.isProtected || before.isProtected) return [];
  const text = `<${x}sheetProtection sheet="1" objects="1" scenarios="1" formatColumns="0" formatRows="0"/>`;
  return [insertInOrder(part.root, SHEET_ORDER, "sheetProtection", text)];
};
