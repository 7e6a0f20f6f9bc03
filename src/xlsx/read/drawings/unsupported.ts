/** Over the cells lies something that we can't show as it is meant: it stays in the file, and is named as not shown. */
export class Unsupported extends Error {
  constructor() {
    super("This can't be shown as it is meant.");
    this.name = "NotShown";
  }
}

export const orUnsupported = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Unsupported();
  return value;
};

/** Goes on only where something is as we know it. */
export const requireSupported = (isKnown: boolean): void => {
  if (!isKnown) throw new Unsupported();
};
