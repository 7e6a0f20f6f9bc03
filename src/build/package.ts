import { execFileSync } from "node:child_process";
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { parseArgs } from "node:util";
import { bundle, sizesInWords } from "./bundle";
import { withIntegrity } from "./integrity";
import { filesToKeep } from "./keptFiles";
import { PACKAGE, ROOT } from "./paths";
import { siteAddress } from "./siteAddress";
import { refuseForeignFolder } from "./target";
import { SERVED_OFFICE_JS } from "./webpackConfig";

/** `npm run package -- --site https://... [--office-js https://...] [--out folder]` makes a folder for any static https host. */
const { values } = parseArgs({
  options: {
    site: { type: "string" },
    "office-js": { type: "string", default: SERVED_OFFICE_JS },
    out: { type: "string", default: PACKAGE },
  },
});

const pathsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();

const stampPages = (folder: string): void => {
  for (const page of pathsIn(folder).filter((path) => path.endsWith(".html"))) {
    const file = join(folder, page);
    const contentOf = (address: string): Buffer => readFileSync(join(dirname(file), address));
    writeFileSync(file, withIntegrity(readFileSync(file, "utf8"), contentOf));
  }
};

const listKeptFiles = (folder: string): void => {
  const worker = join(folder, "service-worker.js");
  const files = pathsIn(folder).map((path) => ({ path, content: readFileSync(join(folder, path)) }));
  writeFileSync(worker, filesToKeep(files) + readFileSync(worker, "utf8"));
};

const billOfMaterials = (): Buffer =>
  execFileSync("npm", ["sbom", "--omit", "dev", "--sbom-format", "cyclonedx"], {
    cwd: ROOT,
    shell: process.platform === "win32",
  });

const makePackage = async (): Promise<void> => {
  const site = siteAddress(values.site);
  refuseForeignFolder(values.out);
  const sizes = await bundle({
    officeJsAddress: values["office-js"],
    siteAddress: site,
    folder: values.out,
    isPackage: true,
  });
  writeFileSync(join(values.out, "sbom.json"), billOfMaterials());
  copyFileSync(join(ROOT, "LICENSE"), join(values.out, "LICENSE"));
  stampPages(values.out);
  listKeptFiles(values.out);
  process.stdout.write(
    `${sizesInWords(sizes)}${values.out} is ready to be served at ${site}. Its help/office.html explains what to do next.\n`,
  );
};

makePackage().catch((failure: unknown) => {
  process.stderr.write(`${failure instanceof Error ? failure.message : String(failure)}\n`);
  process.exitCode = 1;
});
