import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./paths";

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** As its makers name it (SPDX); undefined if the package doesn't say. */
  readonly license: string | undefined;
}

interface Lockfile {
  readonly packages: Readonly<Record<string, { version?: string; license?: string; dev?: boolean }>>;
}

const FOLDER = "node_modules/";

/** The packages whose code may ship: those that the lockfile doesn't mark as development-only. */
export const shippedPackages = (): ShippedPackage[] => {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as Lockfile;
  return Object.entries(packages).flatMap(([path, { version = "", license, dev }]) =>
    path === "" || dev
      ? []
      : [{ name: path.slice(path.lastIndexOf(FOLDER) + FOLDER.length), version, license }],
  );
};

/** A notice for the people who receive the files. */
export const thirdPartyNotice = (packages: readonly ShippedPackage[]): string =>
  [
    "Third-party packages in Gablewright and their licenses. Full notices are next to the scripts (*.LICENSE.txt).",
    "",
    ...packages.map(({ name, version, license }) => `${name} ${version}: ${license ?? "see its repository"}`),
    "",
  ].join("\n");
