/** Spreadsheets don't tell names apart by letter case. */
export const includesName = (names: readonly string[], name: string): boolean =>
  names.some((each) => each.toLowerCase() === name.toLowerCase());

/** The wanted name, or the first of `name 2`, `name 3` ... that isn't taken. */
export const uniqueName = (wanted: string, taken: readonly string[]): string => {
  if (!includesName(taken, wanted)) return wanted;
  let number = 2;
  while (includesName(taken, `${wanted} ${number}`)) number++;
  return `${wanted} ${number}`;
};
