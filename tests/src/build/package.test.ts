import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { withIntegrity } from "../../../src/build/integrity";
import { filesToKeep } from "../../../src/build/keptFiles";
import { manifestFor } from "../../../src/build/manifestFor";
import { ROOT } from "../../../src/build/paths";
import { refuseForeignFolder } from "../../../src/build/target";
import { siteAddress } from "../../../src/build/siteAddress";

describe("the address of a site", () => {
  it.each([
    ["https://tools.example", "https://tools.example/"],
    ["https://tools.example/gablewright", "https://tools.example/gablewright/"],
    ["https://tools.example:8443/a/b/", "https://tools.example:8443/a/b/"],
  ])("ends in a slash: %s", (typed, address) => {
    expect(siteAddress(typed)).toBe(address);
  });

  it.each([
    "http://tools.example/",
    "tools.example/gablewright",
    "https://tools.example/?version=1",
    "https://tools.example/#top",
    "https://someone@tools.example/",
  ])("is refused where Office couldn't load from it: %s", (typed) => {
    expect(() => siteAddress(typed)).toThrow(
      `--site takes the https address of the folder that will be served, such as https://tools.example/gablewright/, got "${typed}".`,
    );
  });

  it("has to be given", () => {
    expect(() => siteAddress(undefined)).toThrow("got nothing.");
  });
});

describe("the folder of a package", () => {
  const folder = mkdtempSync(join(tmpdir(), "gablewright-out-"));
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it("is new, empty or an earlier package's, and never one that holds something else", () => {
    expect(() => {
      refuseForeignFolder(join(folder, "new"));
    }).not.toThrow();
    expect(() => {
      refuseForeignFolder(folder);
    }).not.toThrow();
    writeFileSync(join(folder, "bid.xlsx"), "");
    expect(() => {
      refuseForeignFolder(folder);
    }).toThrow(`"${folder}" holds something else. Nothing was written.`);
    writeFileSync(join(folder, "functions.json"), "{}");
    expect(() => {
      refuseForeignFolder(folder);
    }).not.toThrow();
  });
});

describe("the manifest for a site", () => {
  const own = readFileSync(join(ROOT, "manifest.xml"), "utf8");
  const manifest = manifestFor(own, "https://tools.example/gablewright/");

  it("loads everything from there", () => {
    const addresses = [...manifest.matchAll(/DefaultValue="(https:[^"]+)"/g)].map(([, address]) => address);
    expect(addresses.length).toBeGreaterThan(8);
    for (const address of addresses)
      expect(address).toMatch(/^https:\/\/tools\.example\/gablewright\/[a-z0-9.-]+/);
    expect(manifest).not.toContain("localhost");
  });

  it("names the site's origin, without a folder, as the domain that may be gone to", () => {
    expect(manifest).toContain("<AppDomain>https://tools.example</AppDomain>");
  });

  it("is otherwise the same", () => {
    expect(manifest.replaceAll("https://tools.example/gablewright/", "https://localhost:3000/")).toBe(
      own.replaceAll("https://localhost:3000<", "https://tools.example<"),
    );
  });
});

const sha384 = (text: string): string => `sha384-${createHash("sha384").update(text).digest("base64")}`;

describe("a page's stamps", () => {
  const contentOf = (address: string): Buffer => Buffer.from(`what ${address} holds`);

  it.each([
    ['<script src="a.js" defer></script>', "a.js"],
    ["<script defer src=lib/a.js></script>", "lib/a.js"],
    ['<link rel="stylesheet" href="../a.css"/>', "../a.css"],
  ])("are put on %s", (tag, address) => {
    const stamp = sha384(`what ${address} holds`);
    expect(withIntegrity(`<p>${tag}</p>`, contentOf)).toBe(
      `<p>${tag.replace(/ (src|href)=/, ` integrity="${stamp}" $1=`)}</p>`,
    );
  });

  it.each([
    '<script src="https://elsewhere.example/a.js"></script>',
    '<script integrity="sha384-x" src="a.js"></script>',
    '<link rel="icon" href="a.png"/>',
    '<a href="a.html">a</a>',
  ])("leave %s alone", (tag) => {
    expect(withIntegrity(tag, contentOf)).toBe(tag);
  });
});

describe("what a browser keeps", () => {
  it("is every file that a page asks for, known by what it holds", () => {
    const paths = [
      "index.html",
      "help/index.html",
      "1.ab.js",
      "1.ab.js.LICENSE.txt",
      "third-party.txt",
      "manifest.xml",
    ];
    const script = filesToKeep(
      [...paths, "service-worker.js", "sbom.json", "functions.json"].map((path) => ({
        path,
        content: Buffer.from(path),
      })),
    );
    const kept = JSON.parse(/^const FILES_TO_KEEP = (.*);\n$/.exec(script)?.[1] ?? "") as { url: string }[];
    expect(kept).toEqual(
      ["index.html", "help/index.html", "1.ab.js", "functions.json"].map((url) => ({
        url,
        revision: sha384(url),
        integrity: sha384(url),
      })),
    );
  });
});
