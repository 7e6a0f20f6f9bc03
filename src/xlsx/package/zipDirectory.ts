import { FileError } from "../book/fileError";
import { LIMITS } from "../book/limits";

/** An entry of a zip file's central directory. */
export interface DirectoryEntry {
  readonly name: string;
  readonly isEncrypted: boolean;
  readonly method: number;
  readonly crc: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly headerAt: number;
}

const END_MARK = 0x06054b50;
const ENTRY_MARK = 0x02014b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;
const LONGEST_COMMENT = 0xffff;
/** Marks a size stored in a ZIP64 record, for files over 4 GB. They are over our limits anyway. */
const ZIP64_SIZE = 0xffffffff;

const NOT_A_ZIP = new FileError(
  "This isn't an .xlsx workbook, or it is incomplete: it isn't a whole zip file.",
);

const endAt = (view: DataView): number => {
  const first = Math.max(0, view.byteLength - END_BYTES - LONGEST_COMMENT);
  for (let at = view.byteLength - END_BYTES; at >= first; at--)
    if (view.getUint32(at, true) === END_MARK) return at;
  throw NOT_A_ZIP;
};

export const readDirectory = (file: Uint8Array): DirectoryEntry[] => {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (view.byteLength < END_BYTES) throw NOT_A_ZIP;
  const end = endAt(view);
  const count = view.getUint16(end + 10, true);
  if (count > LIMITS.parts)
    throw new FileError(`The file has ${count} parts, more than the limit of ${LIMITS.parts}.`);
  const entries: DirectoryEntry[] = [];
  const names = new TextDecoder();
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index++) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== ENTRY_MARK) throw NOT_A_ZIP;
    const nameBytes = view.getUint16(at + 28, true);
    const entry: DirectoryEntry = {
      name: names.decode(file.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + nameBytes)),
      isEncrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packedBytes: view.getUint32(at + 20, true),
      bytes: view.getUint32(at + 24, true),
      headerAt: view.getUint32(at + 42, true),
    };
    if ([entry.packedBytes, entry.bytes, entry.headerAt].includes(ZIP64_SIZE)) throw NOT_A_ZIP;
    entries.push(entry);
    at += ENTRY_BYTES + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
};

const LOCAL_HEADER_MARK = 0x04034b50;
const LOCAL_HEADER_BYTES = 30;

/** The compressed bytes of an entry. */
export const packedBytesOf = (file: Uint8Array, { headerAt, packedBytes }: DirectoryEntry): Uint8Array => {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (headerAt + LOCAL_HEADER_BYTES > file.length || view.getUint32(headerAt, true) !== LOCAL_HEADER_MARK)
    throw NOT_A_ZIP;
  const from =
    headerAt + LOCAL_HEADER_BYTES + view.getUint16(headerAt + 26, true) + view.getUint16(headerAt + 28, true);
  if (from + packedBytes > file.length) throw NOT_A_ZIP;
  return file.subarray(from, from + packedBytes);
};
