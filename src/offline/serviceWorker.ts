import { precacheAndRoute, type PrecacheEntry } from "workbox-precaching";

/** The build puts this list in front of the script (`src/build/keptFiles.ts`). */
declare const FILES_TO_KEEP: readonly PrecacheEntry[];

/** A new version takes over once no page of the old one is open, so that no page mixes both. Excel adds its own parameters to addresses. */
precacheAndRoute([...FILES_TO_KEEP], { ignoreURLParametersMatching: [/./] });
