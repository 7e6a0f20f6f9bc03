import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { axeFaults } from "../support/axe";
import { describeInBrowser, launch } from "../support/browser";

jest.setTimeout(60_000);

describeInBrowser("function help in a browser", () => {
  let browser: Browser;
  let server: RunningServer;

  beforeAll(async () => {
    server = await serve(WEB, 3300);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  const open = async (name: string, viewport = { width: 800, height: 900 }): Promise<Page> => {
    const page = await browser.newPage({ viewport });
    page.on("console", (message) => {
      throw new Error(message.text());
    });
    await page.goto(new URL(`help/${name}.html`, server.address).href);
    return page;
  };

  it("recalculates an example as its values change, and explains errors", async () => {
    const page = await open("COURSES");
    const result = page.locator("output");
    expect(await result.textContent()).toBe("20 courses");
    await page.getByLabel("Slope length (ft)").fill(`18' 6 1/2"`);
    await result.filter({ hasText: "19 courses" }).waitFor();
    expect(await page.locator("form code").textContent()).toBe(`=GABLE.COURSES("18' 6 1/2""", 12)`);
    await page.getByLabel("Exposure (in)").fill("0");
    await result.filter({ hasText: "#VALUE! exposure must be more than 0 in, got 0" }).waitFor();
    await page.close();
  });

  it("opens a function page from a search, by keyboard", async () => {
    const page = await open("index");
    await page.getByLabel("Search by name or by what it does").fill("attic vents");
    await page.getByRole("status").filter({ hasText: "1 function" }).waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "GABLE.VENTAREA" }).waitFor();
    await page.close();
  });

  it.each([
    ["index", 320],
    ["COURSES", 320],
    ["LAYOUT", 800],
  ])("passes axe: %s at %d px", async (name, width) => {
    const page = await open(name, { width, height: 900 });
    expect(await axeFaults(page, "html")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.close();
  });
});
