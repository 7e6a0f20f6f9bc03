import { InputError } from "../../../shared/inputError";
import { serialOfIsoDate } from "../../../shared/sheetDate";
import { TextField } from "../controls/TextField";

const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** Today where the person is, as `2026-06-01`. */
export const today = (): string => {
  const now = new Date();
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
};

/** The date as spreadsheets count days. */
export const serialOf = (date: string): number => {
  const serial = serialOfIsoDate(date);
  if (serial === undefined) throw new InputError("Give a date first. Nothing was written.");
  return serial;
};

interface Props {
  readonly name: string;
  readonly date: string;
  readonly onDate: (date: string) => void;
}

export const DateField = ({ name, date, onDate }: Props) => (
  <TextField label="Date" type="date" name={name} value={date} onValue={onDate} />
);
