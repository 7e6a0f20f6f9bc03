const MINUTE_MS = 60_000;

const UNITS = [
  { unit: "day", ms: 24 * 60 * MINUTE_MS },
  { unit: "hour", ms: 60 * MINUTE_MS },
  { unit: "minute", ms: MINUTE_MS },
] as const;

const inWords = new Intl.RelativeTimeFormat("en-US");

/** `4 minutes ago`; less than a minute is `just now`. */
export const timeAgo = (time: number, now: number): string => {
  const passedMs = now - time;
  const largest = UNITS.find(({ ms }) => passedMs >= ms);
  return largest ? inWords.format(-Math.floor(passedMs / largest.ms), largest.unit) : "just now";
};
