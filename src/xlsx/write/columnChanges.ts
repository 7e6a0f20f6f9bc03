import { insertInOrder, SHEET_ORDER } from "../xml/elementOrder";
import { columnWidth } from "../styles/sizes";
import type { Splice } from "../xml/splices";
import { childOf, childrenOf, numberAttribute } from "../xml/xml";
import { attributesText } from "../xml/xmlText";
import type { SheetVersions } from "./sheetFrame";

export const columnChanges = ({ part, before, now, x }: SheetVersions): Splice[] => {
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
