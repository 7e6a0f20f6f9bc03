import { precacheAndRoute, type PrecacheEntry } from "workbox-precaching";

/** What stands in front of this script in a package (`src/build/keptFiles.ts`). */
declare const FILES_TO_KEEP: readonly PrecacheEntry[];

/** A new version is taken once no page of the old one is open, so that none is made of both. Excel puts parameters of its own into addresses. */
precacheAndRoute([...FILES_TO_KEEP], { ignoreURLParametersMatching: [/./] });
