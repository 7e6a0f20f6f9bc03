import { FileError } from "../book/fileError";
import { parseXml } from "../xml/xml";
import type { Parts } from "./zip";

/** A relationship from one part to another, or to something outside the file. */
export interface Relationship {
  readonly id: string;
  /** The last segment of its type: `worksheet`, `styles`. */
  readonly kind: string;
  /** The whole type. */
  readonly type: string;
  /** A part's path, or an external address. */
  readonly target: string;
  readonly isExternal: boolean;
}

export const RELATIONSHIP_TYPES = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const folderOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

export const relationshipsPathOf = (path: string): string =>
  `${folderOf(path)}_rels/${path.slice(path.lastIndexOf("/") + 1)}.rels`;

/** Resolves `../media/image1.png` from a part to a path in the package. Rejects a path that leads out of it. */
const resolve = (from: string, target: string): string => {
  const steps: string[] = [];
  for (const step of (target.startsWith("/") ? target : folderOf(from) + target).split("/")) {
    if (step === "" || step === ".") continue;
    if (step !== "..") steps.push(step);
    else if (steps.pop() === undefined)
      throw new FileError(`The file's part ${from} points outside the file: ${target}.`);
  }
  return steps.join("/");
};

/** The part's real path, where the target differs from it in letter case. */
const actualPath = (parts: Parts, path: string): string =>
  parts.has(path)
    ? path
    : ([...parts.keys()].find((each) => each.toLowerCase() === path.toLowerCase()) ?? path);

/** The relationships of a part, or of the package itself where the path is empty. */
export const relationshipsOf = (parts: Parts, from: string): Relationship[] => {
  const path = relationshipsPathOf(from);
  const bytes = parts.get(path);
  if (!bytes) return [];
  return parseXml(bytes, path).root.children.map(({ attributes }) => {
    const type = attributes.get("Type") ?? "";
    const target = attributes.get("Target") ?? "";
    const isExternal = attributes.get("TargetMode") === "External";
    return {
      id: attributes.get("Id") ?? "",
      kind: type.slice(type.lastIndexOf("/") + 1),
      type,
      target: isExternal ? target : actualPath(parts, resolve(from, target)),
      isExternal,
    };
  });
};

/** The parts that can be reached from the package by relationships. */
export const reachableParts = (parts: Parts): ReadonlySet<string> => {
  const found = new Set<string>();
  const next = [""];
  for (let from = next.pop(); from !== undefined; from = next.pop())
    for (const { target, isExternal } of relationshipsOf(parts, from))
      if (!isExternal && parts.has(target) && !found.has(target)) {
        found.add(target);
        next.push(target);
      }
  return found;
};

/** A part's path as a relationship's target, from the package's root. */
export const targetText = (path: string): string => `/${path}`;
