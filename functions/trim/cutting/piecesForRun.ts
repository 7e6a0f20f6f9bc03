import { InputError } from "../../../shared/inputError";
import { lappedPieces } from "../../../shared/laps";
import { feetToInches } from "../../../shared/units";

/** Stock lengths that one run takes, where each piece after the first loses one lap. */
export const piecesForRun = (lengthFt: number, stockIn: number, lapIn: number): number => {
  if (!(lapIn < stockIn))
    throw new InputError(`lap must be less than the stock length, ${stockIn} in, got ${lapIn}`);
  return lappedPieces(feetToInches(lengthFt), stockIn, lapIn);
};
