import { InputError } from "../../../shared/inputError";
import { serialOfIsoDate } from "../../../shared/sheetDate";
import { TextField } from "../controls/TextField";

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
