/** @jest-environment jsdom */
import { TextDecoder, TextEncoder } from "node:util";
import { h } from "preact";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { openClass } from "../../../src/hosts/excel/openClass";
import type { HandOut } from "../../../src/pane/parts/paneHost";
import { PracticeCards } from "../../../src/pane/practice/PracticeCards";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { TOPICS } from "../../../src/practice/topics/index";
import { sheetsOf, studentSheets } from "../../../src/practice/sheets/studentSheets";
import { press, seen, shareShown, show } from "../../support/card";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";

jest.setTimeout(60_000);

// jsdom has neither.
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

describe("the Class card with a fake Excel", () => {
  it("numbers the topics as the class line does", () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    const labels = [...card.querySelectorAll("fieldset label")].map(({ textContent }) => textContent);
    expect(labels).toHaveLength(TOPICS.length);
    expect([labels[3], labels[5]]).toEqual(["4. Courses", "6. Gables"]);
  });

  it("describes the selected level, for screen readers too", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    const levels = card.querySelector<HTMLSelectElement>('[name="class-level"]');
    const hint = (): string | null | undefined =>
      document.getElementById(levels?.getAttribute("aria-describedby") ?? "")?.textContent;
    for (const [level, asks] of [
      ["first hour", "round measurements, the first questions of each topic"],
      ["full roof", "sixteenths or millimeters, every question"],
      ["half day", "quarter inches or 5 mm, more questions"],
    ] as const) {
      await type(card, "class-level", level);
      expect(hint()).toBe(asks);
    }
  });

  it("names a course's files differently from a topic set with the same seed", async () => {
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

  it("opens each version and the answer key", async () => {
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

  it("reports what can't be built before building", async () => {
    const { host, handOut, opened } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-versions", "9");
    press(card, "Build and open");
    await seen(card, "at most 8 at once, and this class has 10");
    await type(card, "class-versions", "");
    expect(card.querySelector(".outcome")?.textContent).toBe("");
    press(card, "Build and open");
    await seen(card, "The number of versions must be a whole number from 1 to 60, got no number.");
    expect(opened).toEqual([]);
  });

  it("can be canceled halfway, and then delivers nothing", async () => {
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
    await seen(card, "Canceled: no files were built.");
    expect(delivered).toEqual([]);
  });
});

describe("the Marking card with a fake Excel", () => {
  it("marks pasted rows on two new sheets, and undoes that", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-seed", "7");
    await type(card, "marking-pasted", "Ann\tA\t1\nBob\tB\t2");
    press(card, "Mark pasted rows");
    await seen(card, "2 students,");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Class", "Class answers"]);
    press(card, "Undo");
    await seen(card, "Undone: the sheets were removed");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid"]);
  });

  it("marks the rows that fit, and names the others", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "marking-pasted", "Ann\tA\t1\nBob\tZ\t2");
    press(card, "Mark pasted rows");
    await seen(card, "Row 2 isn't marked");
    expect(card.textContent).toContain("Added");
  });

  it("reports two students with the same name", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "marking-pasted", "Ann\tA\t1\nAnn\tB\t2");
    press(card, "Mark pasted rows");
    await seen(card, '2 students are named "Ann": check whether one turned in twice.');
  });

  it("marks nothing if the class's fields are wrong", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    await type(card, "class-seed", "");
    await type(card, "marking-pasted", "Ann\tA\t1");
    press(card, "Mark pasted rows");
    await seen(card, "The seed must be 1 to 20 letters, digits and hyphens");
    expect(workbook.sheets).toHaveLength(1);
  });

  it("adds no marks to a student's workbook", async () => {
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
    press(card, "Mark pasted rows");
    await seen(card, "Open the class's own workbook or a new one");
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Bid", "Start", "1 Courses"]);
    giveFiles(card, {
      name: "a.xlsx",
      arrayBuffer: () => Promise.reject(new Error("no file is to be read")),
    });
    await seen(card, "Nothing is marked: the open workbook is a student's");
    expect(workbook.sheets).toHaveLength(3);
  });

  it("names files it can't mark", async () => {
    const { host, handOut, workbook } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    giveFiles(card, {
      name: "notes.xlsx",
      arrayBuffer: () => Promise.resolve(new TextEncoder().encode("notes").buffer),
    });
    await seen(card, "notes.xlsx isn't marked.");
    expect(workbook.sheets).toHaveLength(1);
  });

  it("shows a page's check only while that page is active and unchanged", async () => {
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
    const activate = async (next: Partial<typeof view>): Promise<void> => {
      view = { ...view, ...next };
      for (const listener of listeners) listener();
      await new Promise((resolve) => setTimeout(resolve, 150));
    };
    const check = async (): Promise<void> => {
      press(card, "Check active page");
      await seen(card, "The active sheet isn't a page of a practice workbook");
      await new Promise((resolve) => setTimeout(resolve, 150));
    };
    await check();
    await activate({ selected: { row: 4, column: 1 } });
    expect(outcome?.textContent).not.toBe("");
    await activate({ sheet: "2 Pitch" });
    expect(outcome?.textContent).toBe("");
    await activate({ sheet: "3 Rafter factor" });
    await check();
    expect(outcome?.textContent).not.toBe("");
    await activate({ cells: [["Bid 2"]] });
    expect(outcome?.textContent).toBe("");
    expect(listeners.size).toBe(0);
    const checking = check();
    view = { ...view, sheet: "4 Courses" };
    await checking;
    await activate({});
    expect(outcome?.textContent).not.toBe("");
    await activate({ sheet: "5 Stagger" });
    await type(card, "marking-pasted", "Ann\tZ");
    press(card, "Mark pasted rows");
    await seen(card, "Row 1 isn't marked");
    await activate({ sheet: "2 Pitch" });
    expect(outcome?.textContent).toContain("Row 1 isn't marked");
  });

  it("checks nothing if the active sheet isn't a page", async () => {
    const { host, handOut } = excel();
    const card = show(h(PracticeCards, { host, handOut }));
    press(card, "Check active page");
    await seen(card, "The active sheet isn't a page of a practice workbook");
  });
});
