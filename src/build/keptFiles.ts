import type { PrecacheEntry } from "workbox-precaching";
import { integrityOf } from "./integrity";

/** Files that no page requests. */
const NOT_ASKED_FOR = /\.(?:txt|xml|map)$|^(?:service-worker\.js|sbom\.json|LICENSE)$/;

/** The list of files that the service worker caches, as a script to put before its own. */
export const filesToKeep = (files: readonly { path: string; content: Buffer }[]): string => {
  const entries = files
    .filter(({ path }) => !NOT_ASKED_FOR.test(path))
    .map(({ path, content }): PrecacheEntry => {
      const integrity = integrityOf(content);
      return { url: path, revision: integrity, integrity };
    });
  return `const FILES_TO_KEEP = ${JSON.stringify(entries)};\n`;
};
