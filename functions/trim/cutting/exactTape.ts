import { writeTape } from "../../../shared/lengthText";

/** As fine as tapes are marked, so that a length shows as it was typed. */
const DENOMINATOR = 64;

export const exactTape = (lengthFt: number): string => writeTape(lengthFt, DENOMINATOR);
