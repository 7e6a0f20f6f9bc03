import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { catalog } from "../../../../functions/index";
import { functionsMetadata } from "../../../../src/hosts/excel/customFunctions/metadata";
import { VERSION } from "../../../../shared/version";
import { REQUIREMENTS } from "../../../../src/hosts/excel/requirements";
import { NAMESPACE } from "../../../../src/workbook/namespace";

const ROOT = join(__dirname, "../../../..");
const MANIFEST = join(ROOT, "manifest.xml");

/** In a process of its own: the package holds modules of a kind that the test runner can't load. */
const readByOfficeTool = (): unknown =>
  JSON.parse(
    execFileSync(process.execPath, [
      "-e",
      `require("office-addin-manifest").OfficeAddinManifest.readManifestFile(${JSON.stringify(MANIFEST)})
         .then((info) => process.stdout.write(JSON.stringify(info)))`,
    ]).toString(),
  );

describe("manifest.xml", () => {
  const xml = readFileSync(MANIFEST, "utf8");
  const all = (pattern: RegExp): string[] => [...xml.matchAll(pattern)].map((match) => match[1] ?? "");

  it("is read by office-addin-manifest", () => {
    expect(readByOfficeTool()).toMatchObject({
      id: expect.stringMatching(
        /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
      ) as string,
      displayName: "Gablewright",
      hosts: ["Workbook"],
      permissions: "ReadWriteDocument",
    });
  });

  it("resolves every resource id, each at most 32 characters, and declares none in vain", () => {
    const used = new Set(all(/resid="([^"]+)"/g));
    const declared = all(/<bt:(?:Image|Url|String) id="([^"]+)"/g);
    expect([...used].sort()).toEqual([...declared].sort());
    expect(Math.max(...declared.map(({ length }) => length))).toBeLessThanOrEqual(32);
  });

  it("points to https only, at files that the build makes or copies", () => {
    const addresses = all(/DefaultValue="([a-z]+:\/\/[^"]+)"/g);
    expect(addresses.length).toBeGreaterThan(8);
    addresses.forEach((address) => {
      expect(address).toMatch(/^https:\/\/localhost:3000\//);
    });
  });

  it("has icons of every size that Office asks for, really of that size", () => {
    for (const size of [16, 32, 64, 80]) {
      const file = join(ROOT, `src/assets/icon-${size}.png`);
      expect(existsSync(file)).toBe(true);
      const png = readFileSync(file);
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
    }
    expect(all(/<bt:Image size="(\d+)"/g)).toEqual(["16", "32", "80", "16", "32", "80"]);
  });

  it("asks for the requirement sets that the pane checks at its start", () => {
    const sets = [...xml.matchAll(/<Set Name="([^"]+)" MinVersion="([^"]+)"/g)].map(([, set, version]) => [
      set,
      version,
    ]);
    expect(sets).toEqual(REQUIREMENTS);
  });

  it("has the package's version", () => {
    expect(xml).toContain(`<Version>${VERSION}.0</Version>`);
  });

  it("gives the functions the namespace that formulas in our sheets use", () => {
    expect(xml).toContain(`<bt:String id="Functions.Namespace" DefaultValue="${NAMESPACE}"/>`);
  });
});

describe("functions.json", () => {
  const { functions } = functionsMetadata(catalog, "https://example.test/");

  it("describes the whole catalog and nothing else", () => {
    expect(functions.map(({ id }) => id)).toEqual(catalog.map(({ id }) => id));
    functions.forEach(({ id, name, parameters }, index) => {
      expect(name).toBe(id);
      expect(parameters.map((parameter) => parameter.name)).toEqual(
        catalog[index]?.parameters.map(({ name: own }) => own),
      );
    });
  });

  it("states the default of every optional parameter", () => {
    const clipCount = functions.find(({ id }) => id === "CLIPCOUNT");
    expect(clipCount?.parameters[2]).toMatchObject({
      optional: true,
      description: expect.stringMatching(/ Default: 2\.$/) as string,
    });
  });

  it("keeps within Excel's limits for descriptions", () => {
    for (const { description, parameters } of functions) {
      expect(description.length).toBeLessThanOrEqual(255);
      parameters.forEach((parameter) => {
        expect(parameter.description.length).toBeLessThanOrEqual(255);
      });
    }
  });
});
