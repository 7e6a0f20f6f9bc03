/** A drawing that we can't show faithfully. It stays in the file and is reported as not shown. */
export class Unsupported extends Error {
  constructor() {
    super("This drawing can't be shown faithfully.");
    this.name = "NotShown";
  }
}

export const orUnsupported = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Unsupported();
  return value;
};

/** Throws unless the drawing is of a kind we can show. */
export const requireSupported = (isKnown: boolean): void => {
  if (!isKnown) throw new Unsupported();
};
