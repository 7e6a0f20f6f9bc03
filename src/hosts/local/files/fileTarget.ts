import { download } from "./download";

/** Where Save writes. */
export interface FileTarget {
  readonly name: string;
  /** Where to look for the file: `in your downloads`. */
  readonly where: string;
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
}

/** Chooses where to save. Asks at most once for each workbook, where the browser can write to a file at all. */
export interface ChooseTarget {
  (suggestedName: string): Promise<FileTarget>;
  /** Another workbook is shown, so the next save asks again. */
  forget(): void;
}

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The File System Access API; not every browser has it. */
export interface FilePicker {
  showSaveFilePicker?(options: {
    suggestedName: string;
    types: readonly { description: string; accept: Readonly<Record<string, readonly string[]>> }[];
  }): Promise<FileSystemFileHandle>;
}

const downloads = (name: string): FileTarget => ({
  name,
  where: "in your downloads",
  write: async (bytes) => download(bytes, XLSX, name),
});

/** The browser writes a whole new file beside the old one, and only then puts it in the old one's place. */
const fileOf = (handle: FileSystemFileHandle): FileTarget => ({
  name: handle.name,
  where: "in the file that you chose",
  write: async (bytes) => {
    const stream = await handle.createWritable();
    await stream.write(bytes);
    await stream.close();
  },
});

export const chooseTarget = (browser: FilePicker): ChooseTarget => {
  let chosen: FileTarget | undefined;
  const ask = async (suggestedName: string): Promise<FileTarget> => {
    if (!browser.showSaveFilePicker) return downloads(suggestedName);
    try {
      const types = [{ description: "Excel workbook", accept: { [XLSX]: [".xlsx"] } }];
      return fileOf(await browser.showSaveFilePicker({ suggestedName, types }));
    } catch (failure) {
      if (failure instanceof DOMException && failure.name === "AbortError")
        throw new Error("Canceled: nothing was saved.", { cause: failure });
      throw failure;
    }
  };
  return Object.assign(
    async (suggestedName: string): Promise<FileTarget> => (chosen ??= await ask(suggestedName)),
    {
      forget: () => {
        chosen = undefined;
      },
    },
  );
};
