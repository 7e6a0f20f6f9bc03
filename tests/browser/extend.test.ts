import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { axeFaults } from "../support/axe";
import { describeInBrowser, launch } from "../support/browser";
import { goTo, showPlace, shownAt, tabTo, typeRows, visit } from "../support/localPage";

jest.setTimeout(90_000);

/** An estimator's own block, beside the worked example; slopes in inches, and as tape text. */
const BID = [
  ["Plane", "Eave (ft)", "Slope (in)"],
  ["North", "30", "168"],
  ["South", "20", "'14 ft"],
  ["Total", "=SUM(S4:S5)", ""],
];

const LAST_ROW = 8_001;

/** Planes enough for a write in several pieces. */
const longBid = async (): Promise<Buffer> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Bid");
  sheet.addRow(["Eave (ft)", "Slope (in)"]);
  for (let row = 2; row <= LAST_ROW; row++) sheet.addRow([30, 168]);
  return Buffer.from(await workbook.xlsx.writeBuffer());
};

describeInBrowser("extending a sheet in the local workbook", () => {
  let browser: Browser;
  let server: RunningServer;

  beforeAll(async () => {
    server = await serve(WEB, 3150);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  const open = async () => {
    const opened = await visit(browser, server.address);
    await showPlace(opened.page, "Extend");
    await typeRows(opened.page, "R", 3, BID);
    await goTo(opened.page, "S4");
    return opened;
  };

  const status = (page: Page, sentence: string) => page.getByRole("status").filter({ hasText: sentence });

  it("adds columns with the mouse, and takes them back", async () => {
    const { page, complaints } = await open();
    await page.getByRole("button", { name: "Read the selection" }).click();
    expect(await page.getByLabel('What "Eave (ft)" means').inputValue()).toBe("eave");
    expect(await page.getByLabel('Unit of "Slope (in)"').inputValue()).toBe("in");
    await page.getByRole("checkbox", { name: /^Courses/ }).check();
    await page.getByRole("checkbox", { name: /^Squares/ }).check();
    await page.getByText('Will write U3:V6 on "Takeoff".').waitFor();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, 'Wrote 2 columns, 8 cells, U3:V6 on "Takeoff".').waitFor();
    expect(await shownAt(page, "U3")).toBe("Courses");
    expect(await shownAt(page, "U4")).toBe("14");
    expect(await shownAt(page, "U6")).toBe("28");
    expect(await shownAt(page, "V5")).toBe("2.8");
    await page.getByRole("button", { name: "Undo", exact: true }).last().click();
    await status(page, 'Undone: U3:V6 on "Takeoff" is as it was.').waitFor();
    expect(await shownAt(page, "U4")).toBe("blank");
    expect(complaints).toEqual([]);
  });

  it("adds columns with the keyboard alone; one step for the workbook's own Undo", async () => {
    const { page, complaints } = await open();
    await page.keyboard.press("F6");
    await tabTo(page, "Read the selection");
    await page.keyboard.press("Enter");
    await page.getByText("What the columns hold").waitFor();
    await tabTo(page, "extend-COURSES");
    await page.keyboard.press("Space");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("=1+1");
    await tabTo(page, "Write");
    await page.keyboard.press("Enter");
    await status(page, "Wrote 1 column, 4 cells, U3:U6").waitFor();
    await page.waitForFunction(() => document.activeElement?.textContent === "Undo");
    expect(await shownAt(page, "U3")).toBe("=1+1");
    expect(await page.locator(".cell-formula").count()).toBe(0);
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(200);
    expect(await shownAt(page, "U4")).toBe("blank");
    expect(await shownAt(page, "T4")).toBe("168");
    expect(complaints).toEqual([]);
  });

  it("says what is in the way, offers another place, and leaves what was there alone", async () => {
    const { page } = await open();
    await typeRows(page, "U", 5, [["call first"]]);
    await goTo(page, "R3:T6");
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page.getByRole("checkbox", { name: /^Courses/ }).check();
    await page.getByText('U5 holds "call first".').waitFor();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, 'U5 holds "call first". Nothing was written.').waitFor();
    await page.getByRole("button", { name: "Use column V instead" }).click();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, "V3:V6").waitFor();
    expect(await shownAt(page, "U5")).toBe("call first");
    expect(await shownAt(page, "V4")).toBe("14");
  });

  it("won't take back what has been edited since, nor write on a sheet that has changed", async () => {
    const { page } = await open();
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page.getByRole("checkbox", { name: /^Courses/ }).check();
    await typeRows(page, "S", 5, [["21"]]);
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, "The sheet has changed, or another sheet is active").waitFor();
    await goTo(page, "S4");
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page.getByRole("checkbox", { name: /^Courses/ }).check();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, "Wrote 1 column").waitFor();
    await typeRows(page, "U", 4, [["15"]]);
    await page.getByRole("button", { name: "Undo", exact: true }).last().click();
    await status(page, 'U4 on "Takeoff" has changed since; nothing was undone.').waitFor();
    expect(await shownAt(page, "U4")).toBe("15");
  });

  it("places one cell or a small block at the selection", async () => {
    const { page } = await open();
    await goTo(page, "R12");
    await page.getByLabel("Add").selectOption("cell");
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page
      .locator("#place-extend")
      .getByText(/^slope length is missing/)
      .waitFor();
    await page.getByLabel("slope length (feet) (needed)").fill("18,5");
    await page.getByText(/got "18,5"/).waitFor();
    await page.getByLabel("slope length (feet) (needed)").fill("18' 6\"");
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, 'Wrote 1 column, 1 cell, R12 on "Takeoff".').waitFor();
    expect(await shownAt(page, "R12")).toBe("19");
    await goTo(page, "R15");
    await page.getByLabel("Add").selectOption("block");
    await page.getByRole("button", { name: "Read the selection" }).click();
    await page.getByRole("button", { name: "Write", exact: true }).click();
    await status(page, "R15:S20").waitFor();
    await typeRows(page, "R", 16, [["20"]]);
    expect(await shownAt(page, "S16")).toBe("20");
    expect(await shownAt(page, "S17")).toBe("blank");
  });

  /** Reads the long sheet, and begins to write two columns beside it. */
  const beginLongWrite = async (page: Page): Promise<void> => {
    await goTo(page, "A2");
    await page.getByRole("button", { name: "Read the selection" }).click();
    for (const result of [/^Area/, /^Squares/]) await page.getByRole("checkbox", { name: result }).check();
    await page.getByText(`Will write C1:D${LAST_ROW} on "Bid".`).waitFor();
    await page.getByRole("button", { name: "Write", exact: true }).click();
  };

  const openLong = async () => {
    const opened = await visit(browser, server.address);
    await opened.page
      .getByLabel("Open .xlsx")
      .setInputFiles({ name: "long.xlsx", mimeType: "application/octet-stream", buffer: await longBid() });
    await status(opened.page, "Opened long.xlsx").waitFor();
    await showPlace(opened.page, "Extend");
    return opened;
  };

  it("leaves the keyboard to somebody who types on the sheet while a long write ends", async () => {
    const { page } = await openLong();
    await beginLongWrite(page);
    await page.getByRole("progressbar", { name: "Cells written" }).waitFor();
    await goTo(page, "H5");
    await status(page, `C1:D${LAST_ROW} on "Bid".`).waitFor();
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", H6" }).waitFor();
    expect(await shownAt(page, "H5")).toBe("7");
    expect(await shownAt(page, `D${LAST_ROW}`)).toBe("4.2");
  });

  it("goes on with the keyboard where it says that a write was canceled", async () => {
    const { page } = await openLong();
    await beginLongWrite(page);
    await page.getByRole("button", { name: "Cancel" }).focus();
    await page.keyboard.press("Enter");
    await status(page, "Canceled: nothing was written.").waitFor();
    await page.waitForFunction(
      () => document.activeElement?.textContent === "Canceled: nothing was written.",
    );
  });

  it("shows how far a long write and its Undo are; canceled, they leave the sheet as it was", async () => {
    const { page, complaints } = await openLong();
    // Without waiting for the button to be at rest: by then the work may be over.
    const cancel = (): Promise<void> => page.getByRole("button", { name: "Cancel" }).dispatchEvent("click");

    await beginLongWrite(page);
    await page.getByRole("progressbar", { name: "Cells written" }).waitFor();
    await cancel();
    await status(page, "Canceled: nothing was written.").waitFor();
    expect(await shownAt(page, "C2")).toBe("blank");
    expect(await shownAt(page, `C${LAST_ROW}`)).toBe("blank");

    await beginLongWrite(page);
    await status(page, `C1:D${LAST_ROW} on "Bid".`).waitFor();
    expect(await shownAt(page, `D${LAST_ROW}`)).toBe("4.2");
    const undo = page.locator("#place-extend").getByRole("button", { name: "Undo" });
    await undo.click();
    await page.getByRole("progressbar", { name: "Cells undone" }).waitFor();
    await cancel();
    await status(page, "Canceled: what was written stays.").waitFor();
    expect(await shownAt(page, `D${LAST_ROW}`)).toBe("4.2");
    await undo.click();
    await status(page, `Undone: C1:D${LAST_ROW} on "Bid" is as it was.`).waitFor();
    expect(await shownAt(page, "C2")).toBe("blank");
    expect(complaints).toEqual([]);
  });

  it.each(["light", "dark"] as const)(
    "has no fault that axe finds in the proposal: %s",
    async (colorScheme) => {
      const { page } = await visit(browser, server.address, { colorScheme });
      await showPlace(page, "Extend");
      await typeRows(page, "R", 3, BID.slice(0, 2));
      await goTo(page, "S4");
      await page.getByRole("button", { name: "Read the selection" }).click();
      await page.getByRole("checkbox", { name: /^Courses/ }).check();
      await page.getByRole("checkbox", { name: /^Thermal move/ }).check();
      expect(await axeFaults(page, "#pane")).toEqual([]);
    },
  );
});
