import { tidyText } from "../../shared/amountText";
import type { Filled } from "../../shared/kinds/kind";
import { readLengthText } from "../../shared/lengthText";
import { readPitchText } from "../../shared/pitchText";

/** What a person answered: a length that names its unit, a pitch that names its form, a number alone, or words. */
export type AnswerReading =
  | { readonly kind: "length"; readonly inches: number }
  | { readonly kind: "pitch"; readonly rise: number }
  | { readonly kind: "number"; readonly number: number }
  | { readonly kind: "words"; readonly words: string };

/** `$1,234.50` and `1,234 sq ft` as the number in them; a length's own marks have been looked for before. */
const readLoosely = (tidy: string): number | undefined => {
  const [, sign = "", digits = ""] =
    /^(-?) ?\$? ?(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d*)?|\.\d+)(?: ?[a-z²]+\.?){0,3}$/.exec(tidy) ?? [];
  return digits === "" ? undefined : Number(sign + digits.replaceAll(",", ""));
};

/** `6/12` is a pitch before it is a half. */
const NAMES_ITS_PITCH = /(?:(?::|\/| in | on ) ?12|°|degrees|deg\.?|%)$/;

export const readAnswer = (cell: Filled): AnswerReading => {
  if (typeof cell === "number") return { kind: "number", number: cell };
  const text = String(cell);
  const tidy = tidyText(text);
  const rise = NAMES_ITS_PITCH.test(tidy) ? readPitchText(text) : undefined;
  if (rise !== undefined) return { kind: "pitch", rise };
  const length = readLengthText(text);
  if (length && "inches" in length) return { kind: "length", inches: length.inches };
  const number = length ? length.bare : readLoosely(tidy);
  return number === undefined ? { kind: "words", words: tidy } : { kind: "number", number };
};
