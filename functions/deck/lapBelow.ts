import { InputError } from "../../shared/inputError";

/** Rejects a lap as large as what is lapped. */
export const lapBelow = (lapIn: number, label: string, ofIn: number, of: string): void => {
  if (!(lapIn < ofIn))
    throw new InputError(`${label} must be less than the ${of} of ${ofIn} in, got ${lapIn}`);
};
