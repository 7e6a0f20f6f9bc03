import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";

const CANDIDATES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

const found = CANDIDATES.find((path) => path !== undefined && existsSync(path));

/** CI sets this: there a missing browser is a failure, not a skip. */
const isRequired = process.env.GABLEWRIGHT_BROWSER === "required";

const HOW_TO_INSTALL =
  "skipped, no Chromium found: install it (Debian: apt-get install chromium) or name its path in CHROMIUM";

/** `describe` where there is a browser (or must be one); else a suite that is reported as skipped, with what to do. */
export const describeInBrowser = (title: string, suite: () => void): void => {
  if (found !== undefined || isRequired) describe(title, suite);
  else describe.skip(`${title} (${HOW_TO_INSTALL})`, suite);
};

const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const launch = (): Promise<Browser> => {
  if (found === undefined) throw new Error(HOW_TO_INSTALL);
  return chromium.launch({ executablePath: found, args: QUIET });
};
