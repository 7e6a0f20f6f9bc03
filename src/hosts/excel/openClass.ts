import { counted } from "../../../shared/describe";
import type { HandOut } from "../../pane/parts/paneHost";

/** Each opens in a window of its own, so more than these would be too many. */
const MOST_WORKBOOKS = 8;
const CHUNK = 0x8000;

const toBase64 = (bytes: Uint8Array): string => {
  let text = "";
  // All at once would be too many arguments for one call.
  for (let at = 0; at < bytes.length; at += CHUNK)
    text += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(text);
};

/** Opens a class's files as workbooks, which the user saves. Tests pass a stand-in. (Not tried in Excel itself.) */
export const openClass = (excel: Pick<typeof Excel, "createWorkbook">): HandOut => ({
  action: "Build and open",
  refusal: (count) =>
    count > MOST_WORKBOOKS
      ? `Excel opens each file in a window of its own, at most ${MOST_WORKBOOKS} at once, and this class has ${count}: build fewer versions here, or all of them in the local workbook.`
      : undefined,
  deliver: async (_title, files) => {
    for (const { bytes } of files) await excel.createWorkbook(toBase64(bytes));
    return `Opened ${counted(files.length, "workbook")}, the key last. Save each from its own window.`;
  },
});
