import { writeTape } from "../../shared/lengthText";
import { inchesToFeet } from "../../shared/units";

/** Tapes are read to 1/16 in on a roof. */
const TAPE_DENOMINATOR = 16;

/** Inches as tape text: feet and inches to the nearest 1/16 in. Blank where there is no length. */
export const tapeText = (lengthIn: number | undefined): string =>
  lengthIn === undefined ? "" : writeTape(inchesToFeet(lengthIn), TAPE_DENOMINATOR);
