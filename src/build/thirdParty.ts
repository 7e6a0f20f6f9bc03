import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./paths";

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** As its makers name it (SPDX); undefined where the package doesn't say. */
  readonly license: string | undefined;
}

interface Lockfile {
  readonly packages: Readonly<Record<string, { version?: string; license?: string; dev?: boolean }>>;
}

const FOLDER = "node_modules/";

/** The packages whose code may be in what we ship: what the lockfile doesn't keep for development. */
export const shippedPackages = (): ShippedPackage[] => {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as Lockfile;
  return Object.entries(packages).flatMap(([path, { version = "", license, dev }]) =>
    path === "" || dev
      ? []
      : [{ name: path.slice(path.lastIndexOf(FOLDER) + FOLDER.length), version, license }],
  );
};

/** A list for the people who get the files. */
export const thirdPartyNotice = (packages: readonly ShippedPackage[]): string =>
  [
    "Packages of others in Gablewright, and their licenses. Longer notices stand beside the scripts (*.LICENSE.txt).",
    "",
    ...packages.map(({ name, version, license }) => `${name} ${version}: ${license ?? "see its repository"}`),
    "",
  ].join("\n");
