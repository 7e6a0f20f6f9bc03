import { execFileSync } from "node:child_process";
import { copyFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { bundle, sizesInWords } from "./bundle";
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
  });
  writeFileSync(join(values.out, "sbom.json"), billOfMaterials());
  copyFileSync(join(ROOT, "LICENSE"), join(values.out, "LICENSE"));
  process.stdout.write(
    `${sizesInWords(sizes)}${values.out} is ready to be served at ${site}. Its help/office.html explains what to do next.\n`,
  );
};

makePackage().catch((failure: unknown) => {
  process.stderr.write(`${failure instanceof Error ? failure.message : String(failure)}\n`);
  process.exitCode = 1;
});
