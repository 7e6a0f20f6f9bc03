import { tidyText } from "../../shared/amountText";

/** Handwritten and keyboard variants, and the form that is read. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/[´`ʼˈ]/g, "'"],
  [/º/g, "°"],
  [/[⁄∕]/g, "/"],
  [/millimet(?:re|er)s?$/i, "mm"],
  [/centimet(?:re|er)s?$/i, "cm"],
  [/(\d ?)met(?:re|er)s?$/i, "$1m"],
  [/(\d ?)(mm|cm|m)\.$/i, "$1$2"],
  [/(\d ?)ins\.?$/i, "$1in"],
  [/ ?\b(?:percent|per cent|pct)\.?$/i, "%"],
  // `15', 7"` and `15 ft, 7 in`
  [/(['′’]|ft\.?|feet|foot),\s*(?=\d)/gi, "$1 "],
  // Feet, inches and a fraction, with no unit marks.
  [/^\s*(\d+) (\d+ \d+\/\d+)\s*$/, "$1' $2\""],
  [
    /^\s*(\d+(?:\.\d+)?|\d+[ -]\d+\/\d+)\s*(?:(?:"|in)?\s*(?:over|in|on)|(?:"|in)\s*[:/])\s*12\s*"?\s*$/i,
    "$1 in 12",
  ],
];

/** `4 770 mm`. */
const joinThousands = (text: string): string =>
  text.replace(/^(\D*)(\d{1,3}(?:\s\d{3})+)(?![\d/])/, (_, before: string, digits: string) =>
    before.concat(digits.replace(/\s/g, "")),
  );

/** An answer rewritten in the form that is read. */
export const tidyAnswer = (text: string): string =>
  tidyText(joinThousands(SPELLINGS.reduce((tidied, [from, to]) => tidied.replace(from, to), text)));

const THOUSANDS = /(?<![\d.,])\d{1,3}(?:,\d{3})+(?![\d,])/;
const DECIMAL_COMMA = /^(\D*\d+),(\d+\D*)$/;

/** What text with a comma may mean, the likelier first: `1,118` is more than a thousand, or a little more than one. */
export const commaReadings = (tidy: string): readonly string[] => {
  const [thousands] = THOUSANDS.exec(tidy) ?? [];
  return [
    ...(thousands === undefined ? [] : [tidy.replace(thousands, thousands.replaceAll(",", ""))]),
    ...(DECIMAL_COMMA.test(tidy) ? [tidy.replace(DECIMAL_COMMA, "$1.$2")] : []),
    ...(tidy.includes(",") ? [] : [tidy]),
  ];
};
