/** Text that a spreadsheet would take for a number, a date, TRUE or a formula if it were typed: an apostrophe keeps it text. */
export const needsApostrophe = (text: string): boolean =>
  !/^[A-Za-z][^\d]*$/.test(text) || /^(?:true|false)$/i.test(text);
