import { chromiumPath, HOW_TO_INSTALL } from "./chromium";

export { launchChromium as launch } from "./chromium";

/** CI sets this: there a missing browser is a failure, not a skip. */
const isRequired = process.env.GABLEWRIGHT_BROWSER === "required";

/** `describe` where there is a browser (or must be one); else a suite that is reported as skipped, with what to do. */
export const describeInBrowser = (title: string, suite: () => void): void => {
  if (chromiumPath !== undefined || isRequired) describe(title, suite);
  else describe.skip(`${title} (skipped, ${HOW_TO_INSTALL})`, suite);
};
