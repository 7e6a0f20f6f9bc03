/** The address of the folder that will be served, ending in a slash. Throws a message if Office couldn't use it. */
export const siteAddress = (typed: string | undefined): string => {
  const url = typed !== undefined && URL.canParse(typed) ? new URL(typed) : undefined;
  if (url?.protocol !== "https:" || url.search || url.hash || url.username)
    throw new Error(
      `--site takes the https address of the folder that will be served, such as https://tools.example/gablewright/, got ${typed === undefined ? "nothing" : `"${typed}"`}.`,
    );
  return url.href.endsWith("/") ? url.href : `${url.href}/`;
};
