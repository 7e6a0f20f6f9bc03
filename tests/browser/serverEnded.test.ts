import ExcelJS from "exceljs";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { enter, goTo, showPlace, shownAt, unfold, visit } from "../support/localPage";

jest.setTimeout(90_000);

const PORT = 3370;

const bid = async (): Promise<Buffer> => {
  const workbook = new ExcelJS.Workbook();
  workbook.addWorksheet("Bid").addRows([
    ["Eave (ft)", "Slope (in)"],
    [30, 168],
  ]);
  return Buffer.from(await workbook.xlsx.writeBuffer());
};

describeInBrowser("the local workbook after its server has ended", () => {
  let browser: Browser;
  let server: RunningServer;
  let page: Page;
  let complaints: string[];

  const status = (text: string): Promise<void> =>
    page.getByRole("status").filter({ hasText: text }).first().waitFor();

  beforeAll(async () => {
    server = await serve(WEB, PORT);
    browser = await launch();
    ({ page, complaints } = await visit(browser, server.address, { serviceWorkers: "allow" }));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await server.close();
  });

  afterAll(() => browser.close());

  it("makes a change order", async () => {
    await unfold(page, "Change orders");
    const freeze = page.locator('section[aria-labelledby="freeze-title"]');
    await freeze.getByLabel("Date").fill("2026-06-01");
    await freeze.getByRole("button", { name: "Freeze the order" }).click();
    await status('Added "Signed 1".');
    await page.getByText("Takeoff", { exact: true }).first().click();
    await enter(page, "C53", "72");
    const change = page.locator('section[aria-labelledby="change-order-title"]');
    await change.getByLabel("Date").fill("2026-06-20");
    await change.getByRole("button", { name: "Make change order" }).click();
    await status('Added "Change order 1" and "Signed 2".');
  });

  it("saves, opens a file and extends it", async () => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    const saved = new ExcelJS.Workbook();
    await saved.xlsx.load((await readFile(await download.path())) as unknown as ArrayBuffer);
    expect(saved.worksheets.map(({ name }) => name)).toContain("Change order 1");

    await page
      .getByLabel("Open .xlsx")
      .setInputFiles({ name: "bid.xlsx", mimeType: "application/octet-stream", buffer: await bid() });
    await status("Opened bid.xlsx");
    await showPlace(page, "Extend");
    await goTo(page, "A2");
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page.getByRole("checkbox", { name: /^Squares/ }).check();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status("Wrote 1 column");
    expect(await shownAt(page, "C2")).toBe("4.2");
  });

  it("opens again, with every place and the help", async () => {
    // What the browser keeps is at most this old.
    await page.waitForTimeout(2_000);
    await page.reload();
    await page.waitForSelector('[data-grid="painted"]');
    // The file that was opened last, as the browser kept it.
    expect(await shownAt(page, "C2")).toBe("4.2");
    for (const name of ["Functions", "Extend", "Picture", "Sheets"]) await showPlace(page, name);
    expect(complaints.filter((each) => !each.startsWith("request to"))).toEqual([]);
    await page.goto(`${server.address}help/COURSES.html`);
    await page.getByText("=GABLE.COURSES(").first().waitFor();
  });

  it("shows what the server has as soon as it is back", async () => {
    const newer = mkdtempSync(join(tmpdir(), "gablewright-"));
    writeFileSync(join(newer, "index.html"), "<h1>A newer build</h1>");
    const again = await serve(newer, PORT);
    await page.goto(again.address);
    await page.getByText("A newer build").waitFor();
    await page.goto(`${again.address}help/COURSES.html`);
    await page.getByText("=GABLE.COURSES(").first().waitFor();
    await again.close();
    rmSync(newer, { recursive: true });
  });
});
