import { readAmount, readDecimal, signed, splitSign, tidyText } from "./amountText";
import { PITCH_RUN, toRadians } from "./units";

const readUnsigned = (text: string): number | undefined => {
  const onTwelve = /^(.+?) ?(?::|\/| in | on ) ?12$/.exec(text);
  if (onTwelve) return readAmount(onTwelve[1] ?? "");

  const angle = /^(\S+?) ?(?:°|degrees|deg\.?)$/.exec(text);
  if (angle) {
    const degrees = readDecimal(angle[1] ?? "");
    return degrees !== undefined && degrees < 90 ? PITCH_RUN * Math.tan(toRadians(degrees)) : undefined;
  }

  const grade = /^(\S+?) ?%$/.exec(text);
  if (grade) {
    const percent = readDecimal(grade[1] ?? "");
    return percent === undefined ? undefined : (PITCH_RUN * percent) / 100;
  }

  const isFractionAlone = /^\d+\/\d+$/.test(text);
  return isFractionAlone ? undefined : readAmount(text);
};

/**
 * Reads a pitch as its rise on 12: `6:12`, `6/12`, `6 in 12`, `26.57°`, `26.57 deg`, `50%`, or a bare rise, each with
 * or without a sign. Only a run of 12 is read: `1/4` may be a rise over a run or, in old books, over the whole span.
 */
export const readPitchText = (raw: string): number | undefined => {
  const { sign, unsigned } = splitSign(tidyText(raw));
  const rise = readUnsigned(unsigned);
  return rise === undefined ? undefined : signed(sign, rise);
};

/** `6 in 12`, for a message. */
export const pitchInWords = (rise: number): string => `${Number(rise.toFixed(3))} in ${PITCH_RUN}`;
