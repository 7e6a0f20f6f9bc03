import { CellError } from "../../../../../shared/cell";
import { fileWork, type FileWork } from "../../../../../src/hosts/local/files/fileWork";
import type { PageWorkbook } from "../../../../../src/hosts/local/workbook/pageWorkbook";
import { workbookFiles } from "../../../../../src/hosts/local/files/workbookFiles";
import type { Book } from "../../../../../src/xlsx/book/book";
import { doFileJob } from "../../../../../src/xlsx/fileJob";
import { openXlsx, saveXlsx } from "../../../../../src/xlsx/xlsxFile";
import type { Contents } from "../../../../../src/workbook/contents";
import type { FileRun } from "../../../../../src/pane/parts/paneHost";
import { bookOf } from "../../../xlsx/bookOf";

/** Works like the worker: jobs and answers are copied as messages. */
const work: FileWork = fileWork(async (job) => structuredClone(doFileJob(structuredClone(job))));

const BID = bookOf({
  A1: { value: "Eave" },
  B1: { value: 40 },
  C1: { value: new CellError("#N/A", ""), formula: "=NA()" },
});
const fileOf = (book: Book, name: string): File =>
  new File([new Uint8Array(saveXlsx(undefined, book))], name);

const NO_CONTENTS: Contents = { sheets: new Map(), targets: new Map() };

/** A page whose workbook the test sets and edits. */
const page = (tools: { work?: FileWork; failToShow?: boolean } = {}) => {
  const state = { book: BID, edit: 0, calls: [] as string[], contents: NO_CONTENTS };
  const saved: { name: string; bytes: Uint8Array }[] = [];
  const shown: Partial<PageWorkbook> = {
    calculated: Promise.resolve(),
    finishEditing: async () => {
      state.calls.push("finishEditing");
    },
    settled: async () => {
      await Promise.resolve();
      state.calls.push("settled");
    },
    book: () => {
      state.calls.push("book");
      return state.book;
    },
    lastEdit: () => state.edit,
    written: () => Promise.resolve(),
    contents: () => state.contents,
    movesBySheet: () => new Map(),
    pictures: () => Promise.resolve({ bySheet: new Map(), lost: 0 }),
  };
  const workbook = shown as PageWorkbook;
  const files = workbookFiles(Promise.resolve(workbook), {
    show: async (book) => {
      if (tools.failToShow) throw new Error("There is no room to show it.");
      state.book = book;
      state.edit = 0;
      return workbook;
    },
    work: tools.work ?? work,
    canBeDrawn: (source) => Promise.resolve(!source.includes("damaged")),
    beforeAnother: async () => {
      state.calls.push("beforeAnother");
    },
    download: (content, _type, name) => {
      saved.push({ name, bytes: content as Uint8Array });
    },
    chooseTarget: Object.assign(
      async (name: string) => ({
        name,
        where: "in your downloads",
        write: async (bytes: Uint8Array) => {
          saved.push({ name, bytes });
        },
      }),
      { forget: () => undefined },
    ),
  });
  return { state, saved, files };
};

const run = (): FileRun & { readonly stages: string[]; readonly stop: AbortController } => {
  const stages: string[] = [];
  const stop = new AbortController();
  return {
    stages,
    stop,
    signal: stop.signal,
    onStage: ({ words, canCancel }) => stages.push(`${words}${canCancel ? ", can be canceled" : ""}`),
  };
};

const change = (book: Book, value: number): Book => {
  const [sheet] = book.sheets;
  if (!sheet) throw new Error("there is no sheet");
  const cells = new Map(sheet.cells).set(4, new Map([[0, { value }]]));
  return { ...book, sheets: [{ ...sheet, cells }] };
};
const a5 = (bytes: Uint8Array | undefined): unknown =>
  bytes && openXlsx(bytes).book.sheets[0]?.cells.get(4)?.get(0)?.value;

it("opens a file, and saves the same bytes if nothing has changed", async () => {
  const { files, saved, state } = page();
  const opening = run();
  expect(await files.open(fileOf(BID, "Bid.xlsx"), opening)).toEqual({
    said: ["Opened Bid.xlsx: 1 sheet."],
    warnings: [],
  });
  expect(opening.stages).toEqual([
    "Reading the file, can be canceled",
    "Showing and calculating the workbook",
  ]);
  expect(state.book.sheets[0]?.cells.get(0)?.get(2)?.value).toBeInstanceOf(CellError);
  expect(await files.save(run())).toEqual(["Nothing has changed: Bid.xlsx is the same file, byte for byte."]);
  expect(saved[0]?.name).toBe("Bid.xlsx");
});

it("shows a file's pictures except damaged ones, which it reports", async () => {
  const place = { row: 1, column: 1, offsetPx: { x: 0, y: 0 } };
  const filePictures = ["whole", "damaged", "damaged"].map((source) => ({
    from: place,
    to: { widthPx: 10, heightPx: 10 },
    description: "",
    source,
  }));
  const { files, saved, state } = page({
    work: {
      ...work,
      read: async (bytes, signal) => {
        const { book } = await work.read(bytes, signal);
        const sheets = book.sheets.map((sheet) => ({ ...sheet, filePictures }));
        return { book: { ...book, sheets }, notShown: ["1 chart"] };
      },
    },
  });
  const { said } = await files.open(fileOf(BID, "Bid.xlsx"), run());
  expect(said[1]).toBe("Kept in the file but not shown here: 1 chart and 2 damaged pictures.");
  expect(state.book.sheets[0]?.filePictures?.map(({ source }) => source)).toEqual(["whole"]);
  expect(await files.save(run())).toEqual(["Nothing has changed: Bid.xlsx is the same file, byte for byte."]);
  expect(saved).toHaveLength(1);
});

it("warns of a signed sheet that was edited after signing", async () => {
  const { files, state } = page();
  const cells = [["Seal as signed", 1]];
  state.contents = { ...NO_CONTENTS, sheets: new Map([["Signed 1", { cells, formulas: [] }]]) };
  const { warnings } = await files.open(fileOf(BID, "Bid.xlsx"), run());
  expect(warnings).toEqual(['"Signed 1" was edited since it was signed.']);
});

it("saves the results of a running calculation, not the earlier ones", async () => {
  const { files, state } = page();
  await files.save(run());
  expect(state.calls).toEqual(["finishEditing", "settled", "book"]);
});

it("an edit made while the file is being written counts as unsaved", async () => {
  const { files, state } = page({
    work: {
      ...work,
      write: async (job, signal) => {
        state.edit++;
        return work.write(job, signal);
      },
    },
  });
  await files.save(run());
  expect(await files.hasUnsaved()).toBe(true);
});

it("forgets the open file if the next one can't be shown", async () => {
  const tools = { failToShow: false };
  const { files, saved, state } = page(tools);
  await files.open(fileOf(BID, "First.xlsx"), run());
  tools.failToShow = true;
  await expect(files.open(fileOf(BID, "Second.xlsx"), run())).rejects.toThrow("There is no room to show it.");
  state.book = change(BID, 7);
  expect(await files.save(run())).toEqual(["Saved as Gablewright.xlsx in your downloads."]);
  expect(a5(saved[0]?.bytes)).toBe(7);
});

it("keeps the workbook and its file if opening another is canceled or refused", async () => {
  let isStuck = false;
  const stuck = (signal: AbortSignal): Promise<never> =>
    new Promise((_, reject) => {
      signal.throwIfAborted();
      signal.addEventListener("abort", () => {
        reject(signal.reason as Error);
      });
    });
  const { files, saved, state } = page({
    work: {
      read: (bytes, signal) => (isStuck ? stuck(signal) : work.read(bytes, signal)),
      write: (job, signal) => (isStuck ? stuck(signal) : work.write(job, signal)),
    },
  });
  await files.open(fileOf(BID, "First.xlsx"), run());
  state.book = change(state.book, 7);

  isStuck = true;
  const opening = run();
  const opened = files.open(fileOf(BID, "Second.xlsx"), opening);
  opening.stop.abort(new Error("Canceled: the workbook is unchanged."));
  await expect(opened).rejects.toThrow("Canceled: the workbook is unchanged.");
  const saving = run();
  const wasSaved = files.save(saving);
  saving.stop.abort(new Error("Canceled: nothing was saved."));
  await expect(wasSaved).rejects.toThrow("Canceled: nothing was saved.");
  expect(saved).toEqual([]);

  isStuck = false;
  await expect(files.open(new File(["no zip"], "Second.xlsx"), run())).rejects.toThrow(/isn't a whole zip/);
  expect(state.book.sheets[0]?.cells.get(4)?.get(0)?.value).toBe(7);
  await files.save(run());
  expect(saved[0]?.name).toBe("First.xlsx");
  expect(a5(saved[0]?.bytes)).toBe(7);
});

it("keeps a workbook that was changed while a file was being read", async () => {
  const { files, state } = page({
    work: {
      ...work,
      read: async (bytes, signal) => {
        state.edit++;
        return work.read(bytes, signal);
      },
    },
  });
  const before = state.book;
  await expect(files.open(fileOf(BID, "Bid.xlsx"), run())).rejects.toThrow(
    "The workbook was changed while Bid.xlsx was being read, so the file wasn't opened. Save the workbook, or open the file again.",
  );
  expect(state.book).toBe(before);
});

test("a large workbook's formulas are counted before it is shown", async () => {
  const formulas = 20_001;
  const large = bookOf(
    Object.fromEntries(
      Array.from({ length: formulas }, (_, row) => [`A${row + 1}`, { value: 2, formula: "=1+1" }]),
    ),
  );
  const { files } = page({
    work: { ...work, read: () => Promise.resolve({ book: large, notShown: [] }) },
  });
  const opening = run();
  await files.open(new File([], "Large.xlsx"), opening);
  expect(opening.stages).toContain(
    "Showing and calculating 20,001 formulas. The page doesn't respond for part of this",
  );
});
