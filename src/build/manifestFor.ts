/** The address of `npm start` in the manifest. */
export const LOCAL_SITE = "https://localhost:3000/";

/** The manifest with another site's address. */
export const manifestFor = (manifest: string, site: string): string =>
  manifest.replaceAll(LOCAL_SITE, site).replaceAll(new URL(LOCAL_SITE).origin, new URL(site).origin);
