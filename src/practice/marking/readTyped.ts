import { isBlank, type Cell } from "../../../shared/cell";
import { CellError } from "../../../shared/cell";
import { inUnit } from "../../../functions/practice/answerUnits";
import { answerReadings, MONEY, type AnswerReading } from "../../../functions/practice/readAnswer";
import { feetToInches, MM_PER_INCH, PITCH_RUN, toDegrees } from "../../../shared/units";
import type { Field } from "../problem";

const MM_PER_METER = 1000;
const PERCENT = 100;

/** A bare number of a length's unit, in inches. */
const TO_INCHES: Readonly<Record<string, (length: number) => number>> = {
  ft: feetToInches,
  in: (length) => length,
  mm: (length) => length / MM_PER_INCH,
  m: (length) => (length * MM_PER_METER) / MM_PER_INCH,
};

/** What is asked for in words of its own: `26.6 degrees`, `12 packs`. */
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

/** `22-1/2` may be feet or a whole number: where inches are asked for, it is inches. */
const WHOLE_AND_FRACTION = /^\s*(\d+)-(\d+\/\d+)\s*$/;

const inField = (typed: string | number, { kind, unit }: Field): string | number =>
  typeof typed === "string" && kind === "length" && unit === "in"
    ? typed.replace(WHOLE_AND_FRACTION, "$1 $2")
    : typed;

const wordIn = (typed: string | number): string =>
  String(typed)
    .replace(/[\s_-]+/g, " ")
    .replace(/[.!]+$/, "")
    .trim()
    .toLowerCase();

/** All that may be meant, in the unit of the answer's kind; a word as it is; none where it can't be one; null: nothing was typed. */
export const readTyped = (typed: Cell, field: Field): readonly (number | string)[] | null => {
  if (isBlank(typed)) return null;
  if (typed instanceof CellError || typeof typed === "boolean") return [];
  if (field.kind === "word") return [wordIn(typed)];
  return answerReadings(inField(typed, field)).flatMap((reading) => amountOf(reading, field) ?? []);
};
