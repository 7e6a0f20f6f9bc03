/**
 * What a page may load and where it may send data: its own site only, and scripts only from files. A meta tag works on any
 * static host, where a header may not. The task pane has no policy, because Office.js loads scripts of its own.
 */
const policy = (directives: Readonly<Record<string, string>>): string =>
  Object.entries({
    "default-src": "'self'",
    "object-src": "'none'",
    "base-uri": "'none'",
    "form-action": "'none'",
    ...directives,
  })
    .map(([directive, sources]) => `${directive} ${sources}`)
    .join("; ");

export const HELP_POLICY = policy({});

/** The grid adds styles to the page, and uses pictures and fonts from data URLs and blobs. */
export const WORKBOOK_POLICY = policy({
  "style-src": "'self' 'unsafe-inline'",
  "img-src": "'self' data: blob:",
  "font-src": "'self' data:",
});
