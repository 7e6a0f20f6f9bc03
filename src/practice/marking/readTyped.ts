import { isBlank, type Cell } from "../../../shared/cell";
import { CellError } from "../../../shared/cell";
import { readAnswer, type AnswerReading } from "../../../functions/practice/readAnswer";
import { feetToInches, MM_PER_INCH, PITCH_RUN, toDegrees } from "../../../shared/units";
import { SQ_M_PER_SQ_FT } from "../answers";
import type { Field } from "../problem";

const MM_PER_METRE = 1000;
const PERCENT = 100;

/** A bare number of a length's unit, in inches. */
const TO_INCHES: Readonly<Record<string, (length: number) => number>> = {
  ft: feetToInches,
  in: (length) => length,
  mm: (length) => length / MM_PER_INCH,
  m: (length) => (length * MM_PER_METRE) / MM_PER_INCH,
};

const amountOf = (reading: AnswerReading, { kind, unit }: Field): number | undefined => {
  switch (reading.kind) {
    case "length":
      return kind === "length" ? reading.inches : undefined;
    case "pitch":
      if (kind === "pitch") return reading.rise;
      if (kind === "degrees") return toDegrees(Math.atan(reading.rise / PITCH_RUN));
      return kind === "number" && unit === "%" ? (reading.rise / PITCH_RUN) * PERCENT : undefined;
    case "number":
      if (kind === "length") return TO_INCHES[unit]?.(reading.number);
      return kind === "area" && unit === "m²" ? reading.number / SQ_M_PER_SQ_FT : reading.number;
    case "words":
      return undefined;
  }
};

/** What was typed, in the unit of the answer's kind; a word as it is; undefined where it can't be one; null: nothing was. */
export const readTyped = (typed: Cell, field: Field): number | string | null | undefined => {
  if (isBlank(typed)) return null;
  if (typed instanceof CellError || typeof typed === "boolean") return undefined;
  if (field.kind === "word") return String(typed).trim().toLowerCase();
  return amountOf(readAnswer(typed), field);
};
