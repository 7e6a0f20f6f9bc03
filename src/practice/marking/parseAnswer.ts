import { CellError, isBlank, type Cell } from "../../../shared/cell";
import { inUnit } from "../../../functions/practice/answerUnits";
import { answerReadings, MONEY, type AnswerReading } from "../../../functions/practice/readAnswer";
import { feetToInches, MM_PER_INCH, PITCH_RUN, toDegrees } from "../../../shared/units";
import type { Field } from "../topic";

const MM_PER_METER = 1000;
const PERCENT = 100;

/** A bare number in a field of this unit, in inches. */
const TO_INCHES: Readonly<Record<string, (length: number) => number>> = {
  ft: feetToInches,
  in: (length) => length,
  mm: (length) => length / MM_PER_INCH,
  m: (length) => (length * MM_PER_METER) / MM_PER_INCH,
};

/** The unit that may follow a number: `26.6 degrees`, `12 packs`. */
const unitOf = ({ kind, unit }: Field): string => (kind === "money" ? MONEY : unit);

const numberOf = (number: number, unit: string, field: Field): number | undefined => {
  if (field.kind === "length") return unit === "" ? TO_INCHES[field.unit]?.(number) : undefined;
  if (field.kind === "area") return inUnit(number, unit === "" ? field.unit : unit, "sq ft");
  return unit !== "" && field.unit === "" ? undefined : inUnit(number, unit, unitOf(field));
};

const amountOf = (reading: AnswerReading, field: Field): number | undefined => {
  const { kind, unit } = field;
  switch (reading.kind) {
    case "length":
      return kind === "length" ? reading.inches : undefined;
    case "pitch":
      if (kind === "pitch") return reading.rise;
      if (kind === "degrees") return toDegrees(Math.atan(reading.rise / PITCH_RUN));
      return kind === "number" && unit === "%" ? (reading.rise / PITCH_RUN) * PERCENT : undefined;
    case "number":
      return numberOf(reading.number, reading.unit, field);
    case "words":
      return undefined;
  }
};

/** `22-1/2` could be 22 ft 1/2 in; in a field of inches it is 22 1/2 in. */
const WHOLE_AND_FRACTION = /^\s*(\d+)-(\d+\/\d+)\s*$/;

const inField = (typed: string | number, { kind, unit }: Field): string | number =>
  typeof typed === "string" && kind === "length" && unit === "in"
    ? typed.replace(WHOLE_AND_FRACTION, "$1 $2")
    : typed;

const normalizeWord = (typed: string | number): string =>
  String(typed)
    .replace(/[\s_-]+/g, " ")
    .replace(/[.!]+$/, "")
    .trim()
    .toLowerCase();

/**
 * All possible readings of a typed answer: numbers in the unit of the answer's kind, a word in lower case. Empty if it can't be
 * read as that kind; null if nothing was typed.
 */
export const parseAnswer = (typed: Cell, field: Field): readonly (number | string)[] | null => {
  if (isBlank(typed)) return null;
  if (typed instanceof CellError || typeof typed === "boolean") return [];
  if (field.kind === "word") return [normalizeWord(typed)];
  return answerReadings(inField(typed, field)).flatMap((reading) => amountOf(reading, field) ?? []);
};
