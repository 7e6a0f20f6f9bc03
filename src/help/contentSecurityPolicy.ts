/**
 * What a page of ours may load, and where it may send: its own site only, and no script that isn't a file of it. A header
 * would do the same; in the page it holds on any static host. The task pane has none: Office.js brings scripts of its own.
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

/** The grid puts styles into the page as it goes, and draws from pictures and fonts that it keeps in addresses. */
export const WORKBOOK_POLICY = policy({
  "style-src": "'self' 'unsafe-inline'",
  "img-src": "'self' data: blob:",
  "font-src": "'self' data:",
});
