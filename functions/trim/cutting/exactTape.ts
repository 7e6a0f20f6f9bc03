import { writeTape } from "../../../shared/lengthText";

/** As fine as a tape is read where it is read at all: what a person typed shows as typed. */
const DENOMINATOR = 64;

export const exactTape = (lengthFt: number): string => writeTape(lengthFt, DENOMINATOR);
