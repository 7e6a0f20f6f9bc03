import type { Book } from "../../src/xlsx/book/book";
import { writeZip } from "../../src/xlsx/package/zip";
import { openXlsx } from "../../src/xlsx/xlsxFile";
import { convert } from "./libreOffice";

/** The file without the results of its formulas, save those with our functions, which LibreOffice doesn't have. */
const withoutNativeResults = (bytes: Uint8Array): Uint8Array => {
  const parts = new Map(openXlsx(bytes).parts);
  for (const [path, part] of parts)
    if (/worksheets\/sheet/.test(path)) {
      const text = new TextDecoder()
        .decode(part)
        .replace(/(<f[^>]*>)([^<]*)<\/f><v>[^<]*<\/v>/g, (whole, open: string, formula: string) =>
          formula.includes("_xldudf_") ? whole : `${open}${formula}</f>`,
        );
      parts.set(path, new TextEncoder().encode(text));
    }
  return writeZip(parts);
};

/** What LibreOffice makes of a file: it works out every formula without our functions, and takes the results of the others. */
export const recalculated = async (saved: Uint8Array): Promise<Book> =>
  openXlsx(new Uint8Array(await convert(withoutNativeResults(saved), "xlsx", "xlsx"))).book;
