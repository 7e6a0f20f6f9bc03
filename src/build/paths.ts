import { join } from "node:path";

export const ROOT = join(__dirname, "../..");
export const SOURCE = join(ROOT, "src");
/** What the server, or any static host, serves. */
export const WEB = join(ROOT, "dist/web");
/** What `npm run package` makes. */
export const PACKAGE = join(ROOT, "dist/package");
