/** @jest-environment jsdom */
import { h } from "preact";
import { FileCard } from "../../../src/pane/FileCard";
import type { FileRun, WorkbookFiles } from "../../../src/pane/parts/paneHost";
import { press, seen, show } from "../../support/card";

/** Opening and saving that end when the test says so, and what was asked of them in turn. */
const slowFiles = () => {
  const asked: string[] = [];
  const ends = new Map<string, (result: unknown) => void>();
  const begin = <Result>(what: string): Promise<Result> => {
    asked.push(what);
    return new Promise((resolve) => ends.set(what, resolve as (result: unknown) => void));
  };
  const staged = <Result>(what: string, { onStage }: FileRun): Promise<Result> => {
    onStage({ words: `Busy with ${what}`, canCancel: true });
    return begin(what);
  };
  const files: WorkbookFiles = {
    hasUnsaved: () => begin("unsaved"),
    open: ({ name }, run) => staged(`open ${name}`, run),
    save: (run) => staged("save", run),
    saveCsv: () => begin("csv"),
    saveTable: () => begin("table"),
  };
  const end = async (what: string, result: unknown): Promise<void> => {
    ends.get(what)?.(result);
    await rendered();
  };
  return { files, asked, end };
};

const rendered = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));

const fieldOf = (card: HTMLElement): HTMLInputElement => {
  const field = card.querySelector<HTMLInputElement>('[name="workbook-file"]');
  if (!field) throw new Error("there is no field for a file");
  return field;
};

const choose = async (card: HTMLElement, name: string): Promise<void> => {
  const field = fieldOf(card);
  Object.defineProperty(field, "files", { configurable: true, value: [new File(["x"], name)] });
  field.dispatchEvent(new Event("change", { bubbles: true }));
  await rendered();
};

describe("the card that opens and saves files", () => {
  it("asks before it drops changes, and saves the workbook shown where Save is pressed then", async () => {
    const { files, asked, end } = slowFiles();
    const card = show(h(FileCard, { files, onOpened: () => undefined }));
    await choose(card, "bid.xlsx");
    await end("unsaved", true);
    await seen(card, "Opening bid.xlsx replaces it.");
    press(card, "Save .xlsx");
    await rendered();
    expect(card.textContent).not.toContain("replaces it");
    await end("save", ["Saved as Gablewright.xlsx."]);
    await seen(card, "Saved as Gablewright.xlsx.");
    expect(asked).toEqual(["unsaved", "save"]);
  });

  it("says as a warning, and not as what was done, what a person should look into", async () => {
    const { files, end } = slowFiles();
    const card = show(h(FileCard, { files, onOpened: () => undefined }));
    await choose(card, "bid.xlsx");
    await end("unsaved", false);
    const warning = '"Signed 1" was edited since it was signed.';
    await end("open bid.xlsx", { said: ["Opened bid.xlsx: 1 sheet."], warnings: [warning] });
    await seen(card, warning);
    expect(card.querySelector("[role=alert]")?.textContent).toBe(warning);
    expect(card.querySelector("[role=status]")?.textContent).toBe("Opened bid.xlsx: 1 sheet.");
  });

  it("doesn't save while it finds out whether there are changes to drop", async () => {
    const { files, asked, end } = slowFiles();
    const card = show(h(FileCard, { files, onOpened: () => undefined }));
    await choose(card, "bid.xlsx");
    press(card, "Working…");
    press(card, "Save this sheet as .csv");
    await end("unsaved", false);
    expect(asked).toEqual(["unsaved", "open bid.xlsx"]);
    press(card, "Working…");
    await choose(card, "other.xlsx");
    await end("open bid.xlsx", {
      said: ["Opened bid.xlsx: 1 sheet.", "Not shown here: 1 chart."],
      warnings: [],
    });
    await seen(card, "Opened bid.xlsx: 1 sheet.\nNot shown here: 1 chart.");
    expect(asked).toEqual(["unsaved", "open bid.xlsx"]);
    press(card, "Save .xlsx");
    await rendered();
    expect(asked.at(-1)).toBe("save");
  });

  it("says why it can't find out whether there are changes to drop", async () => {
    const { files } = slowFiles();
    const failing = { ...files, hasUnsaved: () => Promise.reject(new Error("The workbook didn't come.")) };
    const card = show(h(FileCard, { onOpened: () => undefined, files: failing }));
    await choose(card, "bid.xlsx");
    await seen(card, "The workbook didn't come.");
  });

  it.each(["Discard changes and open", "Keep this workbook"])(
    "gives the keyboard back to the field where the file was chosen: %s",
    async (answer) => {
      const { files, end } = slowFiles();
      const card = show(h(FileCard, { files, onOpened: () => undefined }));
      await choose(card, "bid.xlsx");
      await end("unsaved", true);
      [...card.querySelectorAll("button")].find(({ textContent }) => textContent === answer)?.focus();
      press(card, answer);
      await rendered();
      expect(document.activeElement).toBe(fieldOf(card));
    },
  );

  it("takes no other file while it is busy, and keeps the keyboard where it is", async () => {
    const { files, end } = slowFiles();
    const card = show(h(FileCard, { files, onOpened: () => undefined }));
    const field = fieldOf(card);
    const opensChooser = (): boolean =>
      field.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }));
    field.focus();
    expect(opensChooser()).toBe(true);
    await choose(card, "bid.xlsx");
    expect(field.getAttribute("aria-disabled")).toBe("true");
    expect(opensChooser()).toBe(false);
    await end("unsaved", false);
    await end("open bid.xlsx", { said: ["Opened bid.xlsx: 1 sheet."], warnings: [] });
    await seen(card, "Opened bid.xlsx");
    expect(opensChooser()).toBe(true);
    expect(document.activeElement).toBe(field);
  });
});
