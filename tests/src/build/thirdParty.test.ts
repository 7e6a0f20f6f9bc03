import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../../src/build/paths";
import { shippedPackages, thirdPartyNotice } from "../../../src/build/thirdParty";

const ALLOWED = ["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "ISC", "0BSD"];

/** Looked at one by one. */
const EXCEPTIONS: Readonly<Record<string, string>> = {
  "@microsoft/office-js": "Microsoft's own license for add-ins; served as it comes, never bundled",
  "@univerjs/telemetry": "names none; the LICENSE file in its package is the Apache License 2.0",
};

describe("what is shipped", () => {
  it("has licenses that let it be", () => {
    const others = shippedPackages().filter(({ license }) => !ALLOWED.includes(license ?? ""));
    expect(others.map(({ name }) => name).sort()).toEqual(Object.keys(EXCEPTIONS).sort());
  });

  it("is listed for those who get it", () => {
    const { dependencies } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as {
      dependencies: Record<string, string>;
    };
    const notice = thirdPartyNotice(shippedPackages());
    for (const [name, version] of Object.entries(dependencies))
      expect(notice).toContain(`${name} ${version}: `);
  });

  it("comes from no address of one registry", () => {
    expect(readFileSync(join(ROOT, "package-lock.json"), "utf8")).not.toContain('"resolved"');
  });
});
