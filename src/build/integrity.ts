import { createHash } from "node:crypto";

/** The hash that a browser checks before it runs a file (W3C Subresource Integrity). */
export const integrityOf = (content: Buffer): string =>
  `sha384-${createHash("sha384").update(content).digest("base64")}`;

/** A tag that loads a file from the page's own site. Its address may be quoted or not. */
const TAG = /<(?:script|link rel="?stylesheet"?)(?: [^<>]*?)? (?:src|href)=("?)([^":\s<>]+)\1[^<>]*>/g;

/** Adds the hash to each script and style sheet of the page's own site. `contentOf` gives a file's content by the page's address for it. */
export const withIntegrity = (html: string, contentOf: (address: string) => Buffer): string =>
  html.replace(TAG, (tag, _quote, address: string) =>
    tag.includes(" integrity=")
      ? tag
      : tag.replace(/ (?:src|href)=/, ` integrity="${integrityOf(contentOf(address))}"$&`),
  );
