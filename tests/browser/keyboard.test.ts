import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { saveXlsx } from "../../src/xlsx/xlsxFile";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { bookOf } from "../src/xlsx/bookOf";
import { goTo, showPlace, tabTo, visit } from "../support/localPage";

jest.setTimeout(120_000);

const BID = saveXlsx(undefined, bookOf({ A1: { value: "Eave" }, B1: { value: 40 } }));

/** The focused element by its id, its name or its text; `BODY` if nothing has the focus. */
const focused = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => {
    const element = document.activeElement;
    return element?.getAttribute("name") ?? (element?.id || element?.textContent || element?.tagName);
  });

describeInBrowser("the keyboard, where the button that was pressed goes away", () => {
  let browser: Browser;
  let server: RunningServer;
  let page: Page;

  beforeAll(async () => {
    server = await serve(WEB, 3200);
    browser = await launch();
  });
  beforeEach(async () => {
    ({ page } = await visit(browser, server.address));
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  /** Chooses a file while the workbook has an unsaved change, and moves to an answer with the keyboard. */
  const comeToAnswer = async (answer: string): Promise<void> => {
    await goTo(page, "O29");
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
    await page.keyboard.press("F6");
    await tabTo(page, "workbook-file");
    await page.getByLabel("Open .xlsx").setInputFiles({
      name: "bid.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from(BID),
    });
    await page.getByRole("alert").filter({ hasText: "Opening bid.xlsx replaces it." }).waitFor();
    expect(await focused(page)).toBe("workbook-file");
    await tabTo(page, answer);
    await page.keyboard.press("Enter");
  };

  it("stays on the file field when the workbook is kept", async () => {
    await comeToAnswer("Keep this workbook");
    await page.getByRole("alert").waitFor({ state: "detached" });
    expect(await focused(page)).toBe("workbook-file");
  });

  it("stays on the file field when the changes are discarded", async () => {
    await comeToAnswer("Discard changes and open");
    await page.getByRole("status").filter({ hasText: "Opened bid.xlsx: 1 sheet." }).waitFor();
    await page.waitForFunction(() => document.activeElement?.getAttribute("name") === "workbook-file");
    await page.keyboard.press("Tab");
    expect(await focused(page)).toBe("Save .xlsx");
  });

  it("is in the section that was loaded again", async () => {
    await page.route("**/*.js", (route) => route.abort());
    await showPlace(page, "Functions");
    await page.getByText("This part of the pane couldn't be loaded.").waitFor();
    await page.unroute("**/*.js");
    await tabTo(page, "Try again");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Find a function" }).waitFor();
    expect(await focused(page)).toBe("place-functions");
    await page.keyboard.press("Tab");
    expect(await page.locator("#place-functions :focus").count()).toBe(1);
  });

  it("stays on the button that finds the best start, and returns to it after Cancel", async () => {
    await showPlace(page, "Picture");
    await page.getByRole("button", { name: "Find the best start" }).waitFor();
    await tabTo(page, "Find the best start");
    await page.keyboard.press("Enter");
    await page.getByRole("status").filter({ hasText: "starts compared" }).waitFor();
    expect(await focused(page)).toBe("Find the best start");

    // The search lays every course for every start: with 20 times the courses there is time to press Cancel.
    await goTo(page, "F7");
    await page.keyboard.type("280");
    await page.keyboard.press("Enter");
    await goTo(page, "C7");
    await page.waitForFunction(() =>
      / in [23]\d\d courses/.test(document.querySelector(".picture desc")?.textContent ?? ""),
    );
    await page.keyboard.press("F6");
    await tabTo(page, "Find the best start");
    await page.keyboard.press("Enter");
    await tabTo(page, "Cancel");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Cancel" }).waitFor({ state: "detached" });
    expect(await focused(page)).toBe("Find the best start");
  });
});
