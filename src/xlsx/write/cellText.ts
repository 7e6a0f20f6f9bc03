import { CellError, type Cell } from "../../../shared/cell";
import { a1, type CellAddress } from "../../workbook/address";
import { attributesText, escapeCellText, escapeXml } from "../xml/xmlText";

/** Errors that every reader knows. Others are stored as #VALUE!, which the next calculation corrects. */
const ERRORS: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
]);

export interface CellParts {
  readonly style: number;
  readonly value: Cell;
  /** The whole formula element. */
  readonly formula?: string;
  /** Unchanged attributes. */
  readonly kept?: Readonly<Record<string, string>>;
  /** Unchanged child elements. */
  readonly keptInside?: string;
}

const valueText = (value: Cell, isResult: boolean, x: string): { type?: string; text: string } => {
  if (value === null) return { text: "" };
  if (value instanceof CellError)
    return { type: "e", text: `<${x}v>${ERRORS.has(value.code) ? value.code : "#VALUE!"}</${x}v>` };
  if (typeof value === "number") return { text: `<${x}v>${value}</${x}v>` };
  if (typeof value === "boolean") return { type: "b", text: `<${x}v>${value ? 1 : 0}</${x}v>` };
  if (isResult) return { type: "str", text: `<${x}v>${escapeCellText(value)}</${x}v>` };
  // An inline string, so that the shared strings part doesn't change. It is never a formula, whatever it begins with.
  return {
    type: "inlineStr",
    text: `<${x}is><${x}t xml:space="preserve">${escapeCellText(value)}</${x}t></${x}is>`,
  };
};

/** A cell element. */
export const cellText = (
  place: CellAddress,
  { style, value, formula, kept = {}, keptInside = "" }: CellParts,
  x: string,
): string => {
  const { type, text } = valueText(value, formula !== undefined, x);
  const attributes = attributesText({ r: a1(place), s: style === 0 ? undefined : style, t: type, ...kept });
  return `<${x}c${attributes}>${formula ?? ""}${text}${keptInside}</${x}c>`;
};

/** A formula element; `range` where it fills an array. */
export const formulaText = (inFile: string, range: string | undefined, x: string): string =>
  `<${x}f${range === undefined ? "" : attributesText({ t: "array", ref: range })}>${escapeXml(inFile)}</${x}f>`;
