import { childOf, childrenOf, numberAttribute, type XmlElement } from "../xml/xml";

/** Built-in number formats, which a file stores by number only (ECMA-376 part 1, 18.8.30, United States). */
const BUILT_IN: ReadonlyMap<number, string> = new Map([
  [1, "0"],
  [2, "0.00"],
  [3, "#,##0"],
  [4, "#,##0.00"],
  [5, '"$"#,##0_);("$"#,##0)'],
  [6, '"$"#,##0_);[Red]("$"#,##0)'],
  [7, '"$"#,##0.00_);("$"#,##0.00)'],
  [8, '"$"#,##0.00_);[Red]("$"#,##0.00)'],
  [9, "0%"],
  [10, "0.00%"],
  [11, "0.00E+00"],
  [12, "# ?/?"],
  [13, "# ??/??"],
  [14, "m/d/yyyy"],
  [15, "d-mmm-yy"],
  [16, "d-mmm"],
  [17, "mmm-yy"],
  [18, "h:mm AM/PM"],
  [19, "h:mm:ss AM/PM"],
  [20, "h:mm"],
  [21, "h:mm:ss"],
  [22, "m/d/yy h:mm"],
  [37, "#,##0_);(#,##0)"],
  [38, "#,##0_);[Red](#,##0)"],
  [39, "#,##0.00_);(#,##0.00)"],
  [40, "#,##0.00_);[Red](#,##0.00)"],
  [41, '_(* #,##0_);_(* (#,##0);_(* "-"_);_(@_)'],
  [42, '_("$"* #,##0_);_("$"* (#,##0);_("$"* "-"_);_(@_)'],
  [43, '_(* #,##0.00_);_(* (#,##0.00);_(* "-"??_);_(@_)'],
  [44, '_("$"* #,##0.00_);_("$"* (#,##0.00);_("$"* "-"??_);_(@_)'],
  [45, "mm:ss"],
  [46, "[h]:mm:ss"],
  [47, "mm:ss.0"],
  [48, "##0.0E+0"],
  [49, "@"],
]);

/** Numbers below this are built in. */
export const FIRST_CUSTOM_ID = 164;

const customFormats = (styleSheet: XmlElement): ReadonlyMap<number, string> =>
  new Map(
    childrenOf(childOf(styleSheet, "numFmts"), "numFmt").map((element) => [
      numberAttribute(element, "numFmtId") ?? 0,
      element.attributes.get("formatCode") ?? "General",
    ]),
  );

/** Number formats by id, without "General". */
export const numberFormats = (styleSheet: XmlElement): ReadonlyMap<number, string> =>
  new Map([...BUILT_IN, ...customFormats(styleSheet)]);

/** The id of a built-in number format; undefined for any other pattern. */
export const builtInId = (pattern: string): number | undefined =>
  pattern === "General" ? 0 : [...BUILT_IN].find(([, each]) => each === pattern)?.[0];
