/** The two error values whose message a spreadsheet shows, so the only two that we raise. */
type RaisedError = "#VALUE!" | "#N/A";

/** Speaks to the person at the sheet: which parameter, what came, what is accepted. Anything else thrown is our bug. */
export class InputError extends Error {
  constructor(
    message: string,
    readonly code: RaisedError = "#VALUE!",
  ) {
    super(message);
    this.name = "InputError";
  }
}

/** No answer exists for input that was understood. */
export const noAnswer = (message: string): InputError => new InputError(message, "#N/A");
