/** Where `npm start` serves, as the manifest says. */
export const LOCAL_SITE = "https://localhost:3000/";

/** The manifest with another site's address in it. */
export const manifestFor = (manifest: string, site: string): string =>
  manifest.replaceAll(LOCAL_SITE, site).replaceAll(new URL(LOCAL_SITE).origin, new URL(site).origin);
