import { InputError } from "../../shared/inputError";

/** Refuses a lap that leaves nothing of what is lapped. */
export const lapBelow = (lapIn: number, label: string, ofIn: number, of: string): void => {
  if (!(lapIn < ofIn))
    throw new InputError(`${label} must be less than the ${of} of ${ofIn} in, got ${lapIn}`);
};
