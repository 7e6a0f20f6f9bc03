const MS_PER_DAY = 86_400_000;
const MINUTES_PER_DAY = 1440;
/** Day 0 of a spreadsheet's calendar. (The 1904 calendar of old workbooks isn't supported.) */
const DAY_ZERO = Date.UTC(1899, 11, 30);

/** Dates that a spreadsheet makes out of something typed: the years 1990 to 2099. No roof length comes near. */
export const FIRST_DATE_SERIAL = 32_874;
export const LAST_DATE_SERIAL = 73_050;

export const isDateSerial = (value: number): boolean =>
  value >= FIRST_DATE_SERIAL && value < LAST_DATE_SERIAL + 1;

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** Day and month of a date serial. */
export const dayAndMonth = (serial: number): { day: number; month: number } => {
  const date = new Date(DAY_ZERO + Math.floor(serial) * MS_PER_DAY);
  return { day: date.getUTCDate(), month: date.getUTCMonth() + 1 };
};

/** `2026-06-01` (ISO 8601) of a date serial. */
export const isoDate = (serial: number): string =>
  new Date(DAY_ZERO + Math.floor(serial) * MS_PER_DAY).toISOString().slice(0, 10);

/** The serial of a date as `2026-06-01`; undefined where it is none. */
export const serialOfIsoDate = (date: string): number | undefined => {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`).getTime() : NaN;
  return Number.isNaN(time) ? undefined : (time - DAY_ZERO) / MS_PER_DAY;
};

/** `6 Dec`, for a message. */
export const dateInWords = (serial: number): string => {
  const { day, month } = dayAndMonth(serial);
  return `${day} ${MONTHS[month - 1]}`;
};

export interface TimeOfDay {
  readonly hours: number;
  readonly minutes: number;
}

/** Hours and minutes of a number that is a whole number of minutes, at least one, as a time of day. */
export const timeOfDay = (value: number): TimeOfDay | undefined => {
  const minutes = value * MINUTES_PER_DAY;
  const whole = Math.round(minutes);
  if (whole < 1 || Math.abs(minutes - whole) > 1e-6) return undefined;
  return { hours: Math.floor(whole / 60), minutes: whole % 60 };
};
