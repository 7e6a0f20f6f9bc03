/** Whether a spreadsheet would read this text as a number, a date, TRUE or a formula if it were typed. An apostrophe keeps it text. */
export const needsApostrophe = (text: string): boolean =>
  !/^[A-Za-z][^\d]*$/.test(text) || /^(?:true|false)$/i.test(text);
