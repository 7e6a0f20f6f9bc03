import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";

const CANDIDATES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];

/** The path of Chromium on this machine; undefined if none is found. */
export const chromiumPath = CANDIDATES.find((path) => path !== undefined && existsSync(path));

export const HOW_TO_INSTALL =
  "no Chromium found: install it (Debian: apt-get install chromium) or put its path in CHROMIUM";

const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const launchChromium = (): Promise<Browser> => {
  if (chromiumPath === undefined) throw new Error(HOW_TO_INSTALL);
  return chromium.launch({ executablePath: chromiumPath, args: QUIET });
};
