import { writeTape } from "../../shared/lengthText";
import { inchesToFeet } from "../../shared/units";

/** As fine as a tape is read on a roof. */
const TAPE_DENOMINATOR = 16;

/** Inches as a tape shows them, in feet and inches to the nearest 1/16; nothing where there is no length. */
export const tapeText = (lengthIn: number | undefined): string =>
  lengthIn === undefined ? "" : writeTape(inchesToFeet(lengthIn), TAPE_DENOMINATOR);
