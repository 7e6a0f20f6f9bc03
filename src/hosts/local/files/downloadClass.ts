import { counted } from "../../../../shared/describe";
import type { HandOut } from "../../../pane/parts/paneHost";
import { download } from "./download";

const ZIP = "application/zip";

/** Downloads all files of a class in one zip file. */
export const downloadClass: HandOut = {
  action: "Build and download",
  deliver: async (title, files) => {
    const { writeZip } = await import("../../../xlsx/package/zip");
    const zip = writeZip(new Map(files.map(({ name, bytes }) => [name, bytes])));
    download(new Uint8Array(zip), ZIP, `${title}.zip`);
    return `Downloaded ${title}.zip: ${counted(files.length - 1, "version")} and the key.`;
  },
};
