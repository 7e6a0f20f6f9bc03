const MOST_LISTED = 8;

/** Names in a sentence; of many only the first, and how many more there are. */
export const shortList = (each: readonly string[]): string => {
  const more = each.length - MOST_LISTED;
  const listed = each.slice(0, MOST_LISTED);
  return new Intl.ListFormat("en").format(more > 0 ? [...listed, `${more} more`] : listed);
};
