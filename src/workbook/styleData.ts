import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import { RULE_COLOR, STYLES, type Style, type StyleName } from "./styles";

const THIN_RULE = { s: BorderStyleTypes.THIN, cl: { rgb: RULE_COLOR } };
const ALL_SIDES: IBorderData = { t: THIN_RULE, r: THIN_RULE, b: THIN_RULE, l: THIN_RULE };

/** A planned cell's style, in the form that the local workbook's engine and workbook files share. */
export const styleData = (name: StyleName | undefined, numberFormat: string | undefined): IStyleData => {
  const style: Style = name ? STYLES[name] : {};
  return {
    ...(style.bold && { bl: BooleanNumber.TRUE }),
    ...(style.italic && { it: BooleanNumber.TRUE }),
    ...(style.sizePt && { fs: style.sizePt }),
    ...(style.color && { cl: { rgb: style.color } }),
    ...(style.fill && { bg: { rgb: style.fill } }),
    ...(style.align === "center" && { ht: HorizontalAlign.CENTER }),
    ...(style.wrap && { tb: WrapStrategy.WRAP }),
    ...(style.border && { bd: ALL_SIDES }),
    ...(numberFormat && { n: { pattern: numberFormat } }),
  };
};
