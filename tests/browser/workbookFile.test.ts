import ExcelJS from "exceljs";
import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { PNG } from "../support/dots";
import { goTo, shownAt, visit } from "../support/localPage";

jest.setTimeout(120_000);

/** The header of a picture, without any pixels. */
const DAMAGED = Buffer.concat([PNG.subarray(0, 33), Buffer.alloc(100, 7)]);

const bid = async (): Promise<Buffer> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Old bid");
  sheet.addRow(["eave", 40]);
  sheet.getCell("C1").value = { formula: "B1*2", result: 80 };
  sheet.addConditionalFormatting({
    ref: "B1:B3",
    rules: [{ type: "expression", priority: 1, formulae: ["B1>20"], style: { font: { bold: true } } }],
  });
  sheet.addImage(workbook.addImage({ base64: DAMAGED.toString("base64"), extension: "png" }), "D4:E6");
  return Buffer.from(await workbook.xlsx.writeBuffer());
};

describeInBrowser("a workbook file in the browser", () => {
  let browser: Browser;
  let server: RunningServer;
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    server = await serve(WEB, 3200);
    browser = await launch();
    ({ page, complaints } = await visit(browser, server.address));
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  const choose = async (): Promise<void> => {
    await page
      .getByLabel("Open .xlsx")
      .setInputFiles({ name: "bid.xlsx", mimeType: "application/octet-stream", buffer: await bid() });
  };

  const saved = async (): Promise<{ name: string; bytes: Buffer }> => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };

  /** The saved file, read by another library. */
  const readBack = async (bytes: Buffer): Promise<ExcelJS.Workbook> => {
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load(
      bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
    );
    return workbook;
  };

  it("saves the worked example with its results", async () => {
    const { name, bytes } = await saved();
    expect(name).toBe("Gablewright.xlsx");
    const workbook = await readBack(bytes);
    expect(workbook.worksheets.map((sheet) => sheet.name)).toEqual([
      "Takeoff",
      "Order",
      "Trim cuts",
      "Trims",
      "Panel",
    ]);
    expect(workbook.getWorksheet("Takeoff")?.getCell("K11").result).toBeCloseTo(1600, 9);
  });

  it("opens a file, reports what isn't shown, and saves the same file again", async () => {
    await choose();
    const status = page.getByRole("status").filter({ hasText: "Opened bid.xlsx: 1 sheet." });
    await status.waitFor();
    expect(await status.textContent()).toContain(
      "not shown here: 1 conditional format and 1 damaged picture.",
    );
    expect(await shownAt(page, "C1")).toBe("80");
    const { name, bytes } = await saved();
    expect(name).toBe("bid.xlsx");
    await page.getByRole("status").filter({ hasText: "Nothing has changed" }).waitFor();
    expect(bytes.length).toBeGreaterThan(0);
  });

  it("saves a cell that is still being edited when Save is clicked, and its results", async () => {
    await goTo(page, "B1");
    await page.keyboard.type("60");
    const { bytes } = await saved();
    const workbook = await readBack(bytes);
    const [sheet] = workbook.worksheets;
    expect(sheet?.getCell("B1").value).toBe(60);
    expect(sheet?.getCell("C1").result).toBe(120);
    await goTo(page, "B1");
    await page.keyboard.type("40");
    await page.keyboard.press("Enter");
    expect(await shownAt(page, "C1")).toBe("80");
  });

  it("saves an edit and its results, and asks before it discards one", async () => {
    await goTo(page, "B1");
    await page.keyboard.type("50");
    await page.keyboard.press("Enter");
    expect(await shownAt(page, "C1")).toBe("100");
    await choose();
    await page.getByText("has changes that aren't saved to a file").waitFor();
    await page.getByRole("button", { name: "Keep this workbook" }).click();
    const { bytes } = await saved();
    const workbook = await readBack(bytes);
    expect(workbook.getWorksheet("Old bid")?.getCell("B1").value).toBe(50);
    expect(workbook.getWorksheet("Old bid")?.getCell("C1").result).toBe(100);
    await choose();
    await page.getByRole("status").filter({ hasText: "Opened bid.xlsx" }).waitFor();
    expect(await shownAt(page, "B1")).toBe("40");
  });

  it("adds a takeoff to the opened file", async () => {
    await page.getByRole("button", { name: "Build takeoff" }).click();
    await page.getByRole("status").filter({ hasText: 'Added "Takeoff"' }).waitFor();
    const { bytes } = await saved();
    const workbook = await readBack(bytes);
    expect(workbook.worksheets.map((sheet) => sheet.name)).toEqual([
      "Old bid",
      "Takeoff",
      "Order",
      "Trim cuts",
      "Trims",
      "Panel",
    ]);
    expect(workbook.getWorksheet("Takeoff")?.getCell("A1").value).toMatch(/^Roof takeoff/);
  });

  it("logs no errors meanwhile", () => {
    expect(complaints).toEqual([]);
  });
});
