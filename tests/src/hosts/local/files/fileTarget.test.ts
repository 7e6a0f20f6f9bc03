import { chooseTarget, type FilePicker } from "../../../../../src/hosts/local/files/fileTarget";

/** A file of the user; a write takes effect only when it is closed, as the File System standard says. */
const fakeFile = (name: string) => {
  const file = { content: [1], written: [] as number[], fails: false };
  const handle = {
    name,
    createWritable: async () => ({
      write: async (bytes: Uint8Array) => {
        if (file.fails) throw new DOMException("the disk is full", "QuotaExceededError");
        file.written = Array.from(bytes);
      },
      close: async () => {
        file.content = file.written;
      },
    }),
  } as unknown as FileSystemFileHandle;
  return { file, handle };
};

const pickerOf = (handle: FileSystemFileHandle) => {
  const asked: string[] = [];
  const browser: FilePicker = {
    showSaveFilePicker: async ({ suggestedName }) => {
      asked.push(suggestedName);
      return handle;
    },
  };
  return { asked, browser };
};

describe("where Save writes", () => {
  it("is asked once, and then the same file is written again", async () => {
    const { file, handle } = fakeFile("Barn 2.xlsx");
    const { asked, browser } = pickerOf(handle);
    const choose = chooseTarget(browser);
    const target = await choose("Barn.xlsx");
    expect([target.name, target.where]).toEqual(["Barn 2.xlsx", "in the file that you chose"]);
    await target.write(Uint8Array.from([7, 8]));
    expect(file.content).toEqual([7, 8]);
    await (await choose("Barn.xlsx")).write(Uint8Array.from([9]));
    expect(file.content).toEqual([9]);
    expect(asked).toEqual(["Barn.xlsx"]);
  });

  it("is asked again for another workbook", async () => {
    const { asked, browser } = pickerOf(fakeFile("Barn.xlsx").handle);
    const choose = chooseTarget(browser);
    await choose("Barn.xlsx");
    choose.forget();
    await choose("Shed.xlsx");
    expect(asked).toEqual(["Barn.xlsx", "Shed.xlsx"]);
  });

  it("keeps the old file whole when the new one can't be written", async () => {
    const { file, handle } = fakeFile("Barn.xlsx");
    const target = await chooseTarget(pickerOf(handle).browser)("Barn.xlsx");
    file.fails = true;
    await expect(target.write(Uint8Array.from([2]))).rejects.toThrow("the disk is full");
    expect(file.content).toEqual([1]);
  });

  it("is nowhere if the user cancels, and is asked again", async () => {
    const answers = [new DOMException("closed", "AbortError"), fakeFile("Barn.xlsx").handle];
    const choose = chooseTarget({
      showSaveFilePicker: async () => {
        const answer = answers.shift();
        if (answer instanceof DOMException) throw answer;
        return answer as FileSystemFileHandle;
      },
    });
    await expect(choose("Barn.xlsx")).rejects.toThrow("Canceled: nothing was saved.");
    expect((await choose("Barn.xlsx")).name).toBe("Barn.xlsx");
  });

  it("is the downloads where the browser can't write to files", async () => {
    const target = await chooseTarget({})("Barn.xlsx");
    expect([target.name, target.where]).toEqual(["Barn.xlsx", "in your downloads"]);
  });
});
