import ExcelJS from "exceljs";
import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { WEB } from "../../src/build/paths";
import type { BookCell } from "../../src/xlsx/book/book";
import { openXlsx, saveXlsx } from "../../src/xlsx/xlsxFile";
import { serve, type RunningServer } from "../../src/server/server";
import { bookOf } from "../src/xlsx/bookOf";
import { describeInBrowser, launch } from "../support/browser";
import { goTo, shownAt, visit } from "../support/localPage";

jest.setTimeout(120_000);

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const LONG = 20_000;

const fileOf = (name: string, cells: Readonly<Record<string, BookCell>>) => ({
  name,
  mimeType: XLSX,
  buffer: Buffer.from(saveXlsx(undefined, bookOf(cells))),
});

describeInBrowser("a workbook file in a browser", () => {
  let browser: Browser;
  let server: RunningServer;

  beforeAll(async () => {
    server = await serve(WEB, 3107);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it("is read in a worker, can be canceled, shown, changed and saved", async () => {
    const { page, complaints } = await visit(browser, server.address);
    const card = page.locator("section.card", { hasText: "Workbook file" });
    const before = await shownAt(page, "A2");

    const long = Object.fromEntries(
      Array.from({ length: LONG }, (_, row): [string, BookCell] => [`A${row + 1}`, { value: `bay ${row}` }]),
    );
    await card.locator('input[type="file"]').setInputFiles(fileOf("Long.xlsx", long));
    await card.getByText("Reading the file").waitFor();
    await card.getByRole("button", { name: "Cancel" }).click();
    await card.getByText("Canceled: the workbook is unchanged.").waitFor();
    expect(await shownAt(page, "A2")).toBe(before);

    await card
      .locator('input[type="file"]')
      .setInputFiles(fileOf("Bid.xlsx", { A2: { value: 4 }, B2: { value: 8, formula: "=A2*2" } }));
    await card.getByText("Opened Bid.xlsx: 1 sheet.").waitFor();
    await page.waitForSelector('[data-grid="painted"]');
    await goTo(page, "A2");
    await page.keyboard.type("5");
    await page.keyboard.press("Enter");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      card.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    await card.getByText("Saved as Bid.xlsx in your downloads.").waitFor();
    const saved = openXlsx(new Uint8Array(readFileSync(await download.path())));
    const row = saved.book.sheets[0]?.cells.get(1);
    // Saved right after the edit, with its result.
    expect([row?.get(0)?.value, row?.get(1)?.value]).toEqual([5, 10]);
    expect(complaints).toEqual([]);
  });

  it("that protects a sheet refuses edits of it, with a message", async () => {
    const { page, complaints } = await visit(browser, server.address);
    const workbook = new ExcelJS.Workbook();
    const bid = workbook.addWorksheet("Bid");
    bid.getCell("A2").value = "Eave (ft)";
    await bid.protect("invented", {});
    await page.locator('input[name="workbook-file"]').setInputFiles({
      name: "Bid.xlsx",
      mimeType: XLSX,
      buffer: Buffer.from(await workbook.xlsx.writeBuffer()),
    });
    await page.getByText("Opened Bid.xlsx: 1 sheet.").waitFor();
    await page.waitForSelector('[data-grid="painted"]');
    await goTo(page, "A2");
    await page.keyboard.type("Rake");
    await page.keyboard.press("Enter");
    await page.getByText('"Bid" is protected in its file: A2 wasn\'t changed.').waitFor();
    expect(await shownAt(page, "A2")).toBe("Eave (ft)");
    expect(complaints).toEqual([]);
  });

  it("that can't be processed because the page's own files can't be loaded says so, and can be opened again", async () => {
    const stopped = await serve(WEB, 3108);
    const { page } = await visit(browser, stopped.address);
    const card = page.locator("section.card", { hasText: "Workbook file" });
    const file = fileOf("Bid.xlsx", { A2: { value: 4 } });
    await stopped.close();
    await card.locator('input[type="file"]').setInputFiles(file);
    await card.getByText("couldn't be processed: this page's files can't be loaded.").waitFor();
    const again = await serve(WEB, 3108);
    await card.locator('input[type="file"]').setInputFiles([]);
    await card.locator('input[type="file"]').setInputFiles(file);
    await card.getByText("Opened Bid.xlsx: 1 sheet.").waitFor();
    await again.close();
  });
});
