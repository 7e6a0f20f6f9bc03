const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** Today where the person is, as `2026-06-01`. */
export const today = (): string => {
  const now = new Date();
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
};
