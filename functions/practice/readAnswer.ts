import type { Filled } from "../../shared/kinds/kind";
import { readLengthText } from "../../shared/lengthText";
import { readPitchText } from "../../shared/pitchText";
import { commaReadings, tidyAnswer } from "./answerText";

interface NumberReading {
  readonly kind: "number";
  readonly number: number;
  /** As written: `sq ft`, `packs`; "" where there was none. */
  readonly unit: string;
}

/** An answer: a length with its unit, a pitch in a form of its own, a number, or words. */
export type AnswerReading =
  | { readonly kind: "length"; readonly inches: number }
  | { readonly kind: "pitch"; readonly rise: number }
  | NumberReading
  | { readonly kind: "words"; readonly words: string };

/** The unit of an amount of money, whatever the currency. */
export const MONEY = "money";
const INCHES_PER_YARD = 36;

const AMOUNT = String.raw`(\d+(?:\.\d*)?|\.\d+)`;
const YARDS = new RegExp(`^${AMOUNT} ?(?:yd|yard)s?\\.?$`);
const WITH_UNIT = new RegExp(`^([+-]?) ?${AMOUNT}(?: ?([a-z²][a-z²2^. ]*))?$`);
/** `$`, `usd` or neither around the number; a minus before or after it, or parentheses instead. */
const CREDIT = new RegExp(`^(?:\\((.+)\\)|(.*\\d)-)$`);
const CURRENCY = new RegExp(`^([+-]?) ?(?:\\$|usd|us\\$) ?([+-]?) ?${AMOUNT}$`);

const numberOf = (sign: string, digits: string): number => Number(sign + digits);

const readMoney = (text: string): NumberReading | undefined => {
  const [, sign = "", signAfter = "", digits] = CURRENCY.exec(text) ?? [];
  return digits === undefined
    ? undefined
    : { kind: "number", number: numberOf(sign || signAfter, digits), unit: MONEY };
};

/** A number with any unit after it. Feet and inch marks were tried before. */
const readNumber = (text: string): NumberReading | undefined => {
  const [, inBrackets, beforeMinus] = CREDIT.exec(text) ?? [];
  const credit = inBrackets ?? beforeMinus;
  if (credit !== undefined) {
    const amount = readNumber(credit);
    return amount && amount.number > 0 ? { ...amount, number: -amount.number, unit: MONEY } : undefined;
  }
  const [, sign = "", digits, unit = ""] = WITH_UNIT.exec(text) ?? [];
  if (digits === undefined) return readMoney(text);
  const isMoney = /^(?:usd|dollars?)$/.test(unit);
  return { kind: "number", number: numberOf(sign, digits), unit: isMoney ? MONEY : unit };
};

/** `6/12` is read as a pitch first, then as a half. */
const NAMES_ITS_PITCH = /(?:(?::|\/| in | on ) ?12|°|degrees|deg\.?|%)$/;

const readOne = (text: string): AnswerReading | undefined => {
  const rise = NAMES_ITS_PITCH.test(text) ? readPitchText(text) : undefined;
  if (rise !== undefined) return { kind: "pitch", rise };
  const length = readLengthText(text);
  if (length && "inches" in length) return { kind: "length", inches: length.inches };
  if (length) return { kind: "number", number: length.bare, unit: "" };
  const [, yards] = YARDS.exec(text) ?? [];
  return yards === undefined ? readNumber(text) : { kind: "length", inches: Number(yards) * INCHES_PER_YARD };
};

/** Everything that an answer may mean, the likeliest first: a comma may separate thousands or decimals. */
export const answerReadings = (cell: Filled): readonly [AnswerReading, ...AnswerReading[]] => {
  if (typeof cell === "number") return [{ kind: "number", number: cell, unit: "" }];
  const tidy = tidyAnswer(String(cell));
  const [first, ...more] = commaReadings(tidy).flatMap((text) => readOne(text) ?? []);
  // Text too long for a measurement tidies to nothing, and is kept as typed.
  return first ? [first, ...more] : [{ kind: "words", words: tidy || String(cell) }];
};

export const readAnswer = (cell: Filled): AnswerReading => answerReadings(cell)[0];
