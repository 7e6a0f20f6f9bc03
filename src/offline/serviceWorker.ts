import { clientsClaim } from "workbox-core";
import { matchPrecache, precache, precacheAndRoute, type PrecacheEntry } from "workbox-precaching";
import { registerRoute } from "workbox-routing";

/** The build puts this list in front of the script (`src/build/keptFiles.ts`). */
declare const FILES_TO_KEEP: readonly PrecacheEntry[];

const files = [...FILES_TO_KEEP];
const LOOPBACK = /^(?:localhost|127\.0\.0\.1|\[::1\])$/;

/** On this computer the server is quick and may have a newer build, so it is asked first. The kept files are for when it has stopped. */
const answerFromServerFirst = (): void => {
  precache(files);
  registerRoute(
    ({ sameOrigin }) => sameOrigin,
    async ({ request, url: { pathname } }) => {
      const answer = await fetch(request).catch(() => undefined);
      if (answer?.ok) return answer;
      const kept = await matchPrecache(pathname.endsWith("/") ? `${pathname}index.html` : pathname);
      return kept ?? answer ?? Response.error();
    },
  );
};

/** A new version takes over once no page of the old one is open, so that no page mixes both. Excel adds its own parameters to addresses. */
const answerFromKeptFiles = (): void => {
  precacheAndRoute(files, { ignoreURLParametersMatching: [/./] });
};

// The first page is loaded before the service worker is. Without this it would be served only after a reload.
clientsClaim();
if (LOOPBACK.test(location.hostname)) answerFromServerFirst();
else answerFromKeptFiles();
