import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { goTo } from "./goTo";

export { goTo };

export interface Visit {
  readonly page: Page;
  /** What a well-behaved page never does: console noise, script errors, requests to elsewhere. */
  readonly complaints: string[];
}

/** The page that visits with the same options share. A page that is opened again needn't compile its scripts again. */
const pages = new WeakMap<Browser, Map<string, Promise<Page>>>();

/** What Playwright writes where it blocks the service worker. */
const BLOCKED = "Service Worker registration blocked by Playwright";

const openPage = async (browser: Browser, options: BrowserContextOptions): Promise<Page> => {
  // Without the service worker: it would store the whole site for each browser. The tests of working offline allow it.
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    serviceWorkers: "block",
    ...options,
  });
  // Save downloads: the browser's own dialog for a file can't be answered here.
  await context.addInitScript(() => {
    Reflect.deleteProperty(window, "showSaveFilePicker");
  });
  return context.newPage();
};

/** Leaves the page, and clears what the browser kept of the workbook. */
const startAfresh = async (page: Page, address: string): Promise<void> => {
  await page.goto("about:blank");
  const session = await page.context().newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", {
    origin: new URL(address).origin,
    storageTypes: "indexeddb",
  });
  await session.detach();
};

const pageWith = (browser: Browser, options: BrowserContextOptions): Promise<Page> => {
  const known = pages.get(browser) ?? new Map<string, Promise<Page>>();
  pages.set(browser, known);
  const key = JSON.stringify(options);
  const page = known.get(key) ?? openPage(browser, options);
  known.set(key, page);
  void page.then((opened) => opened.once("close", () => known.delete(key)));
  return page;
};

/** Opens the local workbook and waits for its grid. The page of the last visit with the same options is opened anew. */
export const visit = async (
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Visit> => {
  const page = await pageWith(browser, options);
  const complaints: string[] = [];
  for (const event of ["console", "pageerror", "request"]) page.removeAllListeners(event);
  page.on("console", (message) => {
    if (message.text() !== BLOCKED) complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(error.stack ?? error.message));
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(?:data|blob):/.test(url)) complaints.push(`request to ${url}`);
  });
  if (page.url() !== "about:blank") await startAfresh(page, address);
  await page.goto(address);
  await page.waitForSelector('[data-grid="painted"]');
  return { page, complaints };
};

/** Types into cells, row by row from one on; a blank text leaves a cell alone. */
export const typeRows = async (page: Page, column: string, row: number, rows: string[][]): Promise<void> => {
  for (const [down, line] of rows.entries())
    for (const [across, typed] of line.entries()) {
      if (typed === "") continue;
      const typedIn = String.fromCharCode(column.charCodeAt(0) + across);
      await goTo(page, `${typedIn}${row + down}`);
      await page.keyboard.type(typed);
      await page.keyboard.press("Enter");
      // The cell is open until Enter has been taken.
      await page.locator(".cell dt", { hasText: new RegExp(`, ${typedIn}${row + down + 1}$`) }).waitFor();
    }
};

/** Types into a cell, presses Enter, and waits for the results. */
export const enter = async (page: Page, address: string, typed: string): Promise<void> => {
  await goTo(page, address);
  await page.evaluate(() => {
    delete document.getElementById("workbook")?.dataset.calculatedAt;
  });
  await page.keyboard.type(typed);
  await page.keyboard.press("Enter");
  await page.waitForSelector("#workbook[data-calculated-at]");
};

/** What a cell shows, as the pane says it. */
export const shownAt = async (page: Page, address: string): Promise<string> => {
  await goTo(page, address);
  return (await page.locator(".cell-shows").textContent()) ?? "";
};

/** Goes to one of the pane's places. */
export const showPlace = (page: Page, name: string): Promise<void> =>
  page.getByRole("tab", { name, exact: true }).click();

/** Opens cards of a place that are folded away. */
export const unfold = (page: Page, title: string): Promise<void> =>
  page.locator("summary", { hasText: title }).click();

/** Goes on with Tab to what bears a name, or says that text. */
export const tabTo = async (page: Page, name: string): Promise<void> => {
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press("Tab");
    const [called, text] = await page.evaluate(() => [
      document.activeElement?.getAttribute("name"),
      document.activeElement?.textContent,
    ]);
    if (called === name || text === name) return;
  }
  throw new Error(`Tab never comes to ${name}`);
};
