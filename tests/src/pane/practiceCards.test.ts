/** @jest-environment jsdom */
import { TextDecoder, TextEncoder } from "node:util";
import { h } from "preact";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { openClass } from "../../../src/hosts/excel/openClass";
import type { HandOut } from "../../../src/pane/parts/paneHost";
import { PracticeCards } from "../../../src/pane/practice/PracticeCards";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { sheetsOf, studentSheets } from "../../../src/practice/sheets/studentSheets";
import { press, seen, shareShown, show } from "../../support/card";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";

jest.setTimeout(60_000);

// jsdom has none of its own.
Object.assign(globalThis, { TextDecoder, TextEncoder });

const type = async (element: HTMLElement, name: string, value: string): Promise<void> => {
  const field = element.querySelector<HTMLInputElement>(`[name="${name}"]`);
  if (!field) throw new Error(`no field ${name}`);
  field.value = value;
  field.dispatchEvent(new Event(field.tagName === "SELECT" ? "change" : "input", { bubbles: true }));
  await new Promise((resolve) => setTimeout(resolve));
};

const giveFiles = (element: HTMLElement, ...files: readonly Pick<File, "name" | "arrayBuffer">[]): void => {
  const input = element.querySelector<HTMLInputElement>('[name="marking-files"]') as HTMLInputElement;
  Object.defineProperty(input, "files", { value: files });
  Object.defineProperty(input, "value", { value: "", writable: true });
  input.dispatchEvent(new Event("change", { bubbles: true }));
};

const excel = () => {
  const workbook = fakeWorkbook("Bid");
  const opened: string[] = [];
  const host = excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  );
  const handOut = openClass({
    createWorkbook: (base64 = "") => {
      opened.push(base64);
      return Promise.resolve();
    },
  });
  return { workbook, opened, host, handOut };
};

describe("the card that makes a class, beside Excel's stand-in", () => {
  it("numbers the topics as the line on every sheet does", () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    const labels = [...card.querySelectorAll("fieldset label")].map(({ textContent }) => textContent);
    expect(labels).toHaveLength(12);
    expect([labels[3], labels[5]]).toEqual(["4. Courses", "6. Gables"]);
  });

  it("says of the level that is picked what it asks, and to screen readers too", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    const levels = card.querySelector<HTMLSelectElement>('[name="class-level"]');
    const hint = (): string | null | undefined =>
      document.getElementById(levels?.getAttribute("aria-describedby") ?? "")?.textContent;
    for (const [level, asks] of [
      ["first hour", "round measures, the first questions of each topic"],
      ["full roof", "sixteenths or millimeters, every question"],
      ["half day", "quarter inches or 5 mm, more questions"],
    ] as const) {
      await type(card, "class-level", level);
      expect(hint()).toBe(asks);
    }
  });

  it("calls a course's files another name than those of topics with the same seed", async () => {
    const { host } = excel();
    const titles: string[] = [];
    const handOut: HandOut = {
      action: "Build and download",
      deliver: (title) => {
        titles.push(title);
        return Promise.resolve("Saved.");
      },
    };
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-seed", "900");
    await type(card, "class-set", "course");
    await type(card, "class-versions", "1");
    press(card, "Build and download");
    await seen(card, "Saved.");
    expect(titles).toEqual(["course-900"]);
  });

  it("opens each version and the key", async () => {
    const { host, handOut, opened } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await seen(card, "Seed, topics, number of problems, level and units are printed on every sheet");
    await type(card, "class-seed", "7");
    await type(card, "class-problems", "3");
    press(card, "Build and open");
    await seen(card, "Opened 3 workbooks, the key last. Save each from its own window.");
    expect(opened).toHaveLength(3);
    // A package begins with PK.
    for (const file of opened) expect(atob(file).slice(0, 2)).toBe("PK");
  });

  it("says what can't be built, before it builds", async () => {
    const { host, handOut, opened } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-versions", "9");
    press(card, "Build and open");
    await seen(card, "at most 8 at once, and this class has 10");
    await type(card, "class-versions", "");
    expect(card.querySelector(".outcome")?.textContent).toBe("");
    press(card, "Build and open");
    await seen(card, "The number of versions is a whole number from 1 to 60, got no number.");
    expect(opened).toEqual([]);
  });

  it("can be given up on the way, and then gives nothing", async () => {
    const { host } = excel();
    const delivered: unknown[] = [];
    const handOut: HandOut = {
      action: "Build and download",
      deliver: (_, files) => Promise.resolve(`${delivered.push(files)}`),
    };
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-versions", "60");
    press(card, "Build and download");
    await seen(card, "Cancel");
    expect(shareShown(card)).toBeLessThan(1);
    press(card, "Cancel");
    await seen(card, "Canceled: nothing was made.");
    expect(delivered).toEqual([]);
  });
});

describe("the card that marks, beside Excel's stand-in", () => {
  it("marks pasted rows onto two new sheets, and takes them back", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-seed", "7");
    await type(card, "marking-pasted", "Ann\tA\t1\nBob\tB\t2");
    press(card, "Mark what is pasted");
    await seen(card, "2 students,");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Class", "Class answers"]);
    press(card, "Undo");
    await seen(card, "Undone: the sheets were removed");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid"]);
  });

  it("marks the lines that fit, and names the others", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "marking-pasted", "Ann\tA\t1\nBob\tZ\t2");
    press(card, "Mark what is pasted");
    await seen(card, "Line 2 isn't marked");
    expect(card.textContent).toContain("Added");
  });

  it("says where two students are called alike", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "marking-pasted", "Ann\tA\t1\nAnn\tB\t2");
    press(card, "Mark what is pasted");
    await seen(card, '2 students are called "Ann": see whether one handed in twice.');
  });

  it("marks nothing where the class's own fields can't be right", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-seed", "");
    await type(card, "marking-pasted", "Ann\tA\t1");
    press(card, "Mark what is pasted");
    await seen(card, "The seed takes 1 to 20 letters, digits and hyphens");
    expect(workbook.sheets).toHaveLength(1);
  });

  it("writes no marks into a student's own workbook", async () => {
    const { host, handOut, workbook } = excel();
    const version = {
      seed: "7",
      version: 0,
      level: "half day",
      units: "metric",
      set: { kind: "topics", topics: ["courses"], problems: 1 },
    } as const;
    const questions = problemsOf(version).map(({ question }) => question);
    await host.addSheets({ sheets: sheetsOf(studentSheets(questions, version)), names: [] });
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "marking-pasted", "Ann\tA\t1");
    press(card, "Mark what is pasted");
    await seen(card, "Open the class's own workbook or a new one");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Start", "1 Courses"]);
    giveFiles(card, {
      name: "a.xlsx",
      arrayBuffer: () => Promise.reject(new Error("no file is to be read")),
    });
    await seen(card, "Nothing is marked: the workbook that is open is a student's");
    expect(workbook.sheets).toHaveLength(3);
  });

  it("says which files it can't mark", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    giveFiles(card, {
      name: "notes.xlsx",
      arrayBuffer: () => Promise.resolve(new TextEncoder().encode("notes").buffer),
    });
    await seen(card, "notes.xlsx isn't marked.");
    expect(workbook.sheets).toHaveLength(1);
  });

  it("says how a page stands as long as that page is in front, as it was", async () => {
    const { host, handOut } = excel();
    let view = { ...(await host.activeSheet()), cells: [["Bid"]] };
    const listeners = new Set<() => void>();
    const watched = {
      ...host,
      activeSheet: () => Promise.resolve(view),
      watch: (listener: () => void) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    };
    const card = show(h(PracticeCards, { host: watched, handOut }));
    const outcome = card.querySelectorAll(".outcome")[1];
    const comesToFront = async (next: Partial<typeof view>): Promise<void> => {
      view = { ...view, ...next };
      for (const listener of listeners) listener();
      await new Promise((resolve) => setTimeout(resolve, 150));
    };
    const check = async (): Promise<void> => {
      press(card, "Check the page in front");
      await seen(card, "The sheet in front is no problem of a practice workbook");
      await new Promise((resolve) => setTimeout(resolve, 150));
    };
    await check();
    await comesToFront({ selected: { row: 4, column: 1 } });
    expect(outcome?.textContent).not.toBe("");
    await comesToFront({ sheet: "2 Pitch" });
    expect(outcome?.textContent).toBe("");
    await comesToFront({ sheet: "3 Rafter factor" });
    await check();
    expect(outcome?.textContent).not.toBe("");
    await comesToFront({ cells: [["Bid 2"]] });
    expect(outcome?.textContent).toBe("");
    expect(listeners.size).toBe(0);
    const checking = check();
    view = { ...view, sheet: "4 Courses" };
    await checking;
    await comesToFront({});
    expect(outcome?.textContent).not.toBe("");
    await comesToFront({ sheet: "5 Stagger" });
    await type(card, "marking-pasted", "Ann\tZ");
    press(card, "Mark what is pasted");
    await seen(card, "Line 1 isn't marked");
    await comesToFront({ sheet: "2 Pitch" });
    expect(outcome?.textContent).toContain("Line 1 isn't marked");
  });

  it("checks nothing where no page is in front", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    press(card, "Check the page in front");
    await seen(card, "The sheet in front is no problem of a practice workbook");
  });
});
