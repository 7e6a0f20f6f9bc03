import { Inflate, zipSync } from "fflate";
import { crc32 } from "./crc32";
import { FileError } from "../book/fileError";
import { inMegabytes, LIMITS } from "../book/limits";
import { packedBytesOf, readDirectory, type DirectoryEntry } from "./zipDirectory";

/** The parts of a package by path, in the file's order. A map, so that a part can't be called `__proto__`. */
export type Parts = ReadonlyMap<string, Uint8Array>;

const STORED = 0;
const DEFLATED = 8;
/** Decompression may grow its input a thousandfold, so it is fed in small pieces and stopped early. */
const FED_AT_A_TIME = 16_384;

const damaged = (name: string): FileError =>
  new FileError(`The file is damaged: its part ${name} doesn't unpack to what the file says.`);

const inflate = (packed: Uint8Array, { name, bytes }: DirectoryEntry): Uint8Array => {
  const whole = new Uint8Array(bytes);
  let filled = 0;
  const stream = new Inflate((chunk) => {
    if (filled + chunk.length > bytes) throw damaged(name);
    whole.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += FED_AT_A_TIME)
      stream.push(packed.subarray(at, at + FED_AT_A_TIME), at + FED_AT_A_TIME >= packed.length);
  } catch {
    throw damaged(name);
  }
  if (filled !== bytes) throw damaged(name);
  return whole;
};

const unpack = (file: Uint8Array, entry: DirectoryEntry): Uint8Array => {
  const packed = packedBytesOf(file, entry);
  if (entry.method !== STORED && entry.method !== DEFLATED)
    throw new FileError(`The file's part ${entry.name} is compressed in a way that isn't supported.`);
  if (entry.method === STORED && packed.length !== entry.bytes) throw damaged(entry.name);
  const whole = entry.method === STORED ? packed : inflate(packed, entry);
  if (crc32(whole) !== entry.crc) throw damaged(entry.name);
  return whole;
};

const INVALID_NAME = /^[/]|[\\:\u0000-\u001f]|(?:^|\/)(?:\.{0,2}|__proto__)(?:\/|$)/;

const refuseInvalid = (entries: readonly DirectoryEntry[]): void => {
  const seen = new Set<string>();
  let total = 0;
  for (const { name, isEncrypted, bytes } of entries) {
    if (isEncrypted) throw new FileError("The file is protected by a password. Remove the password first.");
    if (INVALID_NAME.test(name))
      throw new FileError(`The file has a part with an invalid name: ${JSON.stringify(name)}.`);
    // Part names are case-insensitive.
    if (seen.has(name.toLowerCase())) throw new FileError(`The file has two parts named ${name}.`);
    seen.add(name.toLowerCase());
    if (bytes > LIMITS.partBytes)
      throw new FileError(
        `The file's part ${name} has ${inMegabytes(bytes)} unpacked, more than the limit of ${inMegabytes(LIMITS.partBytes)}.`,
      );
    total += bytes;
  }
  if (total > LIMITS.allPartsBytes)
    throw new FileError(
      `The file has ${inMegabytes(total)} unpacked, more than the limit of ${inMegabytes(LIMITS.allPartsBytes)}.`,
    );
};

/** Magic number of the compound file format: old .xls files and password-protected workbooks. */
const OLD_CONTAINER = [0xd0, 0xcf, 0x11, 0xe0];

/** Decompresses a whole file. Rejects one that is damaged, malformed or over the limits. */
export const readZip = (file: Uint8Array): Parts => {
  if (file.length > LIMITS.fileBytes)
    throw new FileError(
      `The file is ${inMegabytes(file.length)}, more than the limit of ${inMegabytes(LIMITS.fileBytes)}.`,
    );
  if (OLD_CONTAINER.every((byte, at) => file[at] === byte))
    throw new FileError(
      "The file is protected by a password or is an old .xls. Save it as an .xlsx without a password.",
    );
  const entries = readDirectory(file).filter(({ name, bytes }) => !(name.endsWith("/") && bytes === 0));
  refuseInvalid(entries);
  return new Map(entries.map((entry) => [entry.name, unpack(file, entry)]));
};

/** The earliest date a zip can hold, so that the same workbook always gives the same file. */
const NO_DATE = "1980-01-01T00:00:00";

export const writeZip = (parts: Parts): Uint8Array =>
  zipSync(Object.fromEntries([...parts].map(([name, bytes]) => [name, bytes])), { mtime: NO_DATE });
