const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** Today's date in local time, as `2026-06-01`. */
export const today = (): string => {
  const now = new Date();
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
};
