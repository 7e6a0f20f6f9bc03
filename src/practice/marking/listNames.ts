const MAX_LISTED = 8;

/** `Ann, Bob, and Cleo`; of a long list only the first names, then how many more there are. */
export const listNames = (names: readonly string[]): string => {
  const more = names.length - MAX_LISTED;
  const listed = names.slice(0, MAX_LISTED);
  return new Intl.ListFormat("en").format(more > 0 ? [...listed, `${more} more`] : listed);
};
