import ExcelJS from "exceljs";
import { readFile } from "node:fs/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { axeFaults } from "../support/axe";
import { describeInBrowser, launch } from "../support/browser";
import { enter, goTo, shownAt, typeRows, unfold } from "../support/localPage";

jest.setTimeout(120_000);

/** A state is at most two seconds old. On a busy machine, where tests share two processors, writing it takes longer. */
const MOST_OLD_MS = 6_000;

describeInBrowser("what the browser keeps of the local workbook", () => {
  let browser: Browser;
  let server: RunningServer;
  let context: BrowserContext;
  let complaints: string[];

  beforeAll(async () => {
    server = await serve(WEB, 3470);
    browser = await launch();
  });
  beforeEach(async () => {
    complaints = [];
    context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      serviceWorkers: "block",
    });
    await context.addInitScript(() => {
      Reflect.deleteProperty(window, "showSaveFilePicker");
    });
  });
  afterEach(() => context.close());
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  const openTab = async (): Promise<Page> => {
    const page = await context.newPage();
    page.on("pageerror", (error) => complaints.push(error.message));
    await page.goto(server.address);
    return page;
  };
  const painted = (page: Page) => page.waitForSelector('[data-grid="painted"]');
  const openExample = async (): Promise<Page> => {
    const page = await openTab();
    await painted(page);
    return page;
  };
  const type = (page: Page, address: string, text: string): Promise<void> =>
    typeRows(page, address.slice(0, 1), Number(address.slice(1)), [[text]]);
  const mark = (page: Page, text: string | RegExp): Promise<void> =>
    page.locator(".save-mark", { hasText: text }).waitFor({ timeout: 10_000 });
  const leave = async (page: Page): Promise<string[]> => {
    const dialogs: string[] = [];
    page.once("dialog", (dialog) => {
      dialogs.push(dialog.type());
      void dialog.accept();
    });
    await page.reload();
    return dialogs;
  };

  it("comes back after a reload, with formulas and in the same tab; leaving asks first", async () => {
    const page = await openExample();
    await mark(page, "No changes to save.");
    expect(await page.title()).toBe("Gablewright: local workbook");
    await type(page, "R40", "21");
    await enter(page, "R41", "=R40*2");
    await mark(page, /Not saved to a file\. Kept on this computer at/);
    expect(await page.title()).toBe("* Gablewright: local workbook");
    expect(await leave(page)).toEqual(["beforeunload"]);
    await painted(page);
    await mark(page, /Not saved to a file\. Kept on this computer at/);
    expect(await shownAt(page, "R41")).toBe("42");
    await enter(page, "R40", "4");
    expect(await shownAt(page, "R41")).toBe("8");
    expect(complaints).toEqual([]);
  });

  it("is saved by Ctrl+S, and then leaving doesn't ask", async () => {
    const page = await openExample();
    await type(page, "R40", "21");
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
    await mark(page, "All changes are in Gablewright.xlsx.");
    expect(await page.title()).toBe("Gablewright.xlsx - Gablewright");
    const saved = new ExcelJS.Workbook();
    await saved.xlsx.load((await readFile(await download.path())) as unknown as ArrayBuffer);
    expect(saved.getWorksheet("Takeoff")?.getCell("R40").value).toBe(21);
    expect(await leave(page)).toEqual([]);
    await painted(page);
    await mark(page, "All changes are in Gablewright.xlsx.");
    expect(await shownAt(page, "R40")).toBe("21");
  });

  it("counts as changed after more edits than Undo remembers, and after another edit in an undone one's place", async () => {
    const page = await openExample();
    for (let row = 40; row < 62; row++) await type(page, `R${row}`, "1");
    await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
    await mark(page, "All changes are in");
    await type(page, "R70", "1");
    await mark(page, "Not saved to a file.");
    await page.keyboard.press("Control+z");
    await mark(page, "All changes are in");
    await type(page, "R71", "2");
    await mark(page, "Not saved to a file.");
  });

  it("is another workbook in each tab, and both are offered after the tabs are closed", async () => {
    const first = await openExample();
    await type(first, "A1", "Roof takeoff: Barn, north yard");
    const second = await openExample();
    await mark(second, "No changes to save.");
    await type(second, "A1", "Roof takeoff: Shed");
    for (const page of [first, second]) {
      await mark(page, /Kept on this computer at/);
      await page.close({ runBeforeUnload: false });
    }
    const third = await openTab();
    const offer = third.locator(".kept-offer");
    await offer.getByText("just now, not saved to a file").first().waitFor();
    expect(await offer.getByRole("button").allTextContents()).toEqual([
      "Open Shed",
      "Open Barn, north yard",
      "Start with the example",
    ]);
    expect(await third.evaluate(() => document.activeElement?.textContent)).toBe(
      "Pick up where you left off",
    );
    expect(await axeFaults(third, ".kept-offer")).toEqual([]);
    await third.keyboard.press("Tab");
    await third.keyboard.press("Tab");
    await third.keyboard.press("Enter");
    await painted(third);
    expect(await shownAt(third, "A1")).toBe("Roof takeoff: Barn, north yard");

    // What this tab has opened is no longer offered to others.
    const fourth = await openTab();
    await fourth.locator(".kept-offer").getByRole("button", { name: "Open Shed" }).waitFor();
    expect(await fourth.getByRole("button", { name: "Open Barn, north yard" }).count()).toBe(0);
    await fourth.getByRole("button", { name: "Start with the example" }).click();
    await painted(fourth);
    expect(await shownAt(fourth, "A1")).toBe("Roof takeoff: storage building, gable roof");
    expect(complaints).toEqual([]);
  });

  it("lists its versions in the pane, opens an earlier one, and deletes", async () => {
    const page = await openExample();
    await type(page, "R40", "1");
    await mark(page, /Kept on this computer at/);
    await unfold(page, "Kept on this computer");
    const card = page.locator('section[aria-labelledby="kept-title"]');
    await card.getByText("1 workbook, less than 0.1 MB.").waitFor();
    await type(page, "R40", "2");
    const versions = card.getByRole("combobox").locator("option");
    await page.waitForFunction(
      () => document.querySelectorAll('section[aria-labelledby="kept-title"] option').length === 2,
    );
    await card.getByRole("combobox").selectOption({ index: (await versions.count()) - 1 });
    expect(await axeFaults(page, 'section[aria-labelledby="kept-title"]')).toEqual([]);
    await card.getByRole("button", { name: "Open this version" }).click();
    await card.getByRole("status").filter({ hasText: "Opened" }).waitFor();
    expect(await shownAt(page, "R40")).toBe("1");

    const other = await openExample();
    await unfold(other, "Kept on this computer");
    await other.getByText("not saved to a file, open in another tab").waitFor();
    await page.close({ runBeforeUnload: false });
    await type(other, "R40", "3");
    await other.getByRole("button", { name: "Delete all that aren't open" }).click();
    await other.getByText("Deleted all workbooks that aren't open in a tab.").waitFor();
    await other.getByText("not saved to a file, open in this tab").waitFor();
    expect(complaints).toEqual([]);
  });

  it("is kept nowhere in a browser without a database, which the pane says at once", async () => {
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("not allowed", "SecurityError");
      };
    });
    const page = await openExample();
    await page
      .getByRole("alert")
      .filter({ hasText: "This browser keeps nothing on this computer" })
      .waitFor();
    await type(page, "R40", "21");
    expect(await shownAt(page, "R40")).toBe("21");
    expect(complaints).toEqual([]);
  });

  it("says so when there is no room left, and keeps again when there is", async () => {
    const page = await openExample();
    await page.evaluate(() => {
      const { add } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.add = function (...args) {
        if (document.body.dataset.full === "yes") throw new DOMException("full", "QuotaExceededError");
        return add.apply(this, args);
      };
      document.body.dataset.full = "yes";
    });
    await type(page, "R40", "21");
    await page
      .getByRole("alert")
      .filter({ hasText: "There is no room left to keep this workbook" })
      .waitFor();
    await page.evaluate(() => {
      document.body.dataset.full = "no";
    });
    await type(page, "R41", "22");
    await mark(page, /Kept on this computer at/);
    await page.getByRole("alert").filter({ hasText: "There is no room left" }).waitFor({ state: "detached" });
  });

  it("writes back to the file that the user chose, without asking again", async () => {
    await context.addInitScript(() => {
      let asked = 0;
      Object.assign(window, {
        showSaveFilePicker: async () => {
          document.body.dataset.asked = String(++asked);
          const folder = await navigator.storage.getDirectory();
          return folder.getFileHandle("Barn.xlsx", { create: true });
        },
      });
    });
    const page = await openExample();
    const size = (): Promise<number> =>
      page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory();
        return (await (await folder.getFileHandle("Barn.xlsx")).getFile()).size;
      });
    await type(page, "R40", "21");
    await page.keyboard.press("Control+s");
    await mark(page, "All changes are in Barn.xlsx.");
    const first = await size();
    await type(page, "R41", "a text that makes the file longer, 0123456789 abcdefghij");
    await mark(page, "Not saved to a file.");
    await page.keyboard.press("Control+s");
    await mark(page, "All changes are in Barn.xlsx.");
    expect(first).toBeGreaterThan(5_000);
    expect(await size()).toBeGreaterThan(first);
    expect(await page.evaluate(() => document.body.dataset.asked)).toBe("1");
  });

  it("is a recent state that was there, never a mixture, when its tab is killed", async () => {
    // Two cells that always change together: a state in which they differ would be a mixture.
    const page = await openExample();
    const session = await context.newCDPSession(page);
    await enter(page, "R41", "=R40*2");
    const edits: { value: number; at: number }[] = [];
    for (let value = 1; value <= 12; value++) {
      await enter(page, "R40", String(value));
      edits.push({ value, at: Date.now() });
    }
    const killedAt = Date.now();
    void session.send("Page.crash").catch(() => undefined);
    await page.waitForEvent("crash");
    const restored = await openTab();
    await restored
      .getByRole("button", { name: /^Open / })
      .first()
      .click();
    await painted(restored);
    const value = Number(await shownAt(restored, "R40"));
    expect(await shownAt(restored, "R41")).toBe(String(value * 2));
    // Whatever was typed some seconds before the end is in it.
    const due = edits.filter(({ at }) => at <= killedAt - MOST_OLD_MS).map((edit) => edit.value);
    expect(value).toBeGreaterThanOrEqual(Math.max(0, ...due));
    await goTo(restored, "A1");
  });
});
