import { createHash } from "node:crypto";

/** What a browser compares a file with before it runs it (W3C Subresource Integrity). */
export const integrityOf = (content: Buffer): string =>
  `sha384-${createHash("sha384").update(content).digest("base64")}`;

/** A tag that loads from the page's own site, with or without quotes around the address. */
const TAG = /<(?:script|link rel="?stylesheet"?)(?: [^<>]*?)? (?:src|href)=("?)([^":\s<>]+)\1[^<>]*>/g;

/** Stamps each script and style sheet of the page's own site; `contentOf` finds one by the address that the page has for it. */
export const withIntegrity = (html: string, contentOf: (address: string) => Buffer): string =>
  html.replace(TAG, (tag, _quote, address: string) =>
    tag.includes(" integrity=")
      ? tag
      : tag.replace(/ (?:src|href)=/, ` integrity="${integrityOf(contentOf(address))}"$&`),
  );
