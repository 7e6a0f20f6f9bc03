import { readFile } from "node:fs/promises";
import type { Browser, BrowserContextOptions } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { openXlsx } from "../../src/xlsx/xlsxFile";
import { serve, type RunningServer } from "../../src/server/server";
import { axeFaults } from "../support/axe";
import { describeInBrowser, launch } from "../support/browser";
import {
  enter,
  goTo,
  shownAt,
  showPlace,
  tabTo,
  type Visit,
  unfold,
  visit as visitWorkbook,
} from "../support/localPage";

jest.setTimeout(60_000);

describeInBrowser("the local workbook in a browser", () => {
  let browser: Browser;
  let server: RunningServer;

  beforeAll(async () => {
    server = await serve(WEB, 3100);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  const visit = (options: BrowserContextOptions = {}): Promise<Visit> =>
    visitWorkbook(browser, server.address, options);

  it("opens the worked example without errors, and reports how long that took", async () => {
    const { page, complaints } = await visit();
    const paintedMs = await page.evaluate(
      () => performance.getEntriesByName("grid-painted")[0]?.startTime ?? NaN,
    );
    process.stdout.write(`first grid on screen: ${Math.round(paintedMs)} ms after the page's request\n`);
    expect(await page.title()).toBe("Gablewright: local workbook");
    expect(await page.getByRole("heading", { name: "Roof takeoff" }).count()).toBe(1);
    expect(await shownAt(page, "K11")).toBe("1600");
    expect(complaints).toEqual([]);
  });

  it("recalculates when a pitch is typed, and reports how long that took", async () => {
    const { page, complaints } = await visit();
    expect(await shownAt(page, "B15")).toBe("14");
    await page.evaluate(() => {
      window.addEventListener(
        "keydown",
        ({ key }) => {
          if (key === "Enter") document.body.dataset.enteredAt = String(performance.now());
        },
        true,
      );
    });
    await enter(page, "G7", "12:12");
    const delayMs = await page.evaluate(
      () =>
        Number(document.getElementById("workbook")?.dataset.calculatedAt) -
        Number(document.body.dataset.enteredAt),
    );
    process.stdout.write(`from an edit to its results: ${Math.round(delayMs)} ms\n`);
    expect(await shownAt(page, "B15")).toBe("17");
    expect(complaints).toEqual([]);
  });

  it("prices the order, and updates the price when a pitch changes", async () => {
    const { page, complaints } = await visit();
    await enter(page, "G7", "12:12");
    await page.getByText("Order", { exact: true }).click();
    await page.locator(".cell dt", { hasText: "Order, A1" }).waitFor();
    await page.getByText("Trims", { exact: true }).click();
    await page.locator(".cell dt", { hasText: "Trims, A1" }).waitFor();
    await page.getByText("Order", { exact: true }).click();
    await goTo(page, "C6");
    // North at 10 ft of run, 12 in 12, and a 2 ft tail is 16 ft 1 3/4 in: 17 courses instead of 14.
    expect(Number(await shownAt(page, "C6"))).toBeGreaterThan(848);
    expect(Number(await shownAt(page, "L33"))).toBeGreaterThan(8361.45);
    expect(complaints).toEqual([]);
  });

  it("builds a takeoff from the pane with the keyboard alone, as one Undo step", async () => {
    const { page, complaints } = await visit();
    await page.keyboard.press("F6");
    await tabTo(page, "job");
    await page.keyboard.type("=1+1");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page
      .getByRole("status")
      .filter({ hasText: 'Added "Takeoff 2", "Order 2", and "Trim cuts 2". No other sheet was changed.' })
      .waitFor();
    expect(await shownAt(page, "A1")).toBe("Roof takeoff: =1+1");
    expect(await shownAt(page, "K11")).toBe("1600");
    await page.keyboard.press("Control+z");
    await page.getByText("Takeoff 2", { exact: true }).waitFor({ state: "detached" });
    expect(await shownAt(page, "A1")).toBe("Panel");
    expect(complaints).toEqual([]);
  });

  it("undoes a takeoff, but not if someone has edited it", async () => {
    const { page, complaints } = await visit();
    const build = async (): Promise<void> => {
      await page.getByRole("button", { name: "Build takeoff" }).click();
      await page.getByRole("status").filter({ hasText: 'Added "Takeoff 2"' }).waitFor();
    };
    const undo = page.locator("#place-sheets").getByRole("button", { name: "Undo" });
    await build();
    await undo.click();
    await page.getByRole("status").filter({ hasText: "Undone: the sheets were removed" }).waitFor();
    expect(await page.getByText("Takeoff 2", { exact: true }).count()).toBe(0);
    await build();
    await enter(page, "A6", "Porch");
    await undo.click();
    await page
      .getByRole("status")
      .filter({ hasText: 'A6 on "Takeoff 2" has changed since it was built. Nothing was undone.' })
      .waitFor();
    expect(await shownAt(page, "A6")).toBe("Porch");
    expect(complaints).toEqual([]);
  });

  it("draws the selected plane, redraws it as cells change, and finds its best start", async () => {
    const { page, complaints } = await visit();
    await showPlace(page, "Picture");
    const description = page.locator(".picture desc");
    await page.waitForFunction(() =>
      document.querySelector(".picture desc")?.textContent?.includes("60' 0\" wide"),
    );
    expect(await description.textContent()).toContain("in 14 courses laid from the left");
    await enter(page, "C7", "30");
    await goTo(page, "C7");
    await page.waitForFunction(() =>
      document.querySelector(".picture desc")?.textContent?.includes("30' 0\" wide"),
    );
    await page.getByRole("button", { name: "Find the best start" }).click();
    await page.getByRole("status").filter({ hasText: "768 starts compared" }).waitFor();
    expect(complaints).toEqual([]);
  });

  it("lets a search for the best start be canceled", async () => {
    const { page } = await visit();
    await showPlace(page, "Picture");
    // The search lays every course for every start: with 20 times the courses there is time to press the button.
    await enter(page, "F7", "280");
    await goTo(page, "C7");
    await page.waitForFunction(() =>
      / in [23]\d\d courses/.test(document.querySelector(".picture desc")?.textContent ?? ""),
    );
    await page.getByRole("button", { name: "Find the best start" }).click();
    await page.getByRole("button", { name: "Cancel" }).click();
    await page.getByRole("button", { name: "Cancel" }).waitFor({ state: "detached" });
    expect(await page.getByRole("status").filter({ hasText: "compared" }).count()).toBe(0);
  });

  it("builds a field sheet that follows the takeoff, and inserts the picture", async () => {
    const { page, complaints } = await visit();
    await goTo(page, "A8");
    await page.getByRole("button", { name: "Build field sheet" }).click();
    await page.getByRole("status").filter({ hasText: 'Added "Field South"' }).waitFor();
    expect(await shownAt(page, "B4")).toBe("South");
    expect(await shownAt(page, "B21")).toBe(`1' 0"`);
    await showPlace(page, "Picture");
    await page.getByRole("button", { name: "Insert picture" }).click();
    await page.getByRole("status").filter({ hasText: 'The picture is on "Field South"' }).waitFor();
    const savedParts = async (): Promise<ReadonlyMap<string, Uint8Array>> => {
      await showPlace(page, "Sheets");
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save .xlsx" }).click(),
      ]);
      return openXlsx(new Uint8Array(await readFile(await download.path()))).parts;
    };
    const parts = await savedParts();
    expect(new TextDecoder().decode(parts.get("xl/media/image1.svg"))).toMatch(/^<svg/);
    expect(parts.get("xl/media/image1.png")?.length).toBeGreaterThan(10_000);
    await showPlace(page, "Picture");
    await page.locator("#place-picture").getByRole("button", { name: "Undo" }).click();
    await page.getByRole("status").filter({ hasText: "Undone: the picture was removed." }).waitFor();
    expect([...(await savedParts()).keys()].filter((part) => part.startsWith("xl/media/"))).toEqual([]);
    expect(complaints).toEqual([]);
  });

  it("works out a roof from its footprint, draws it live, and lays its planes", async () => {
    const { page, complaints } = await visit();
    await page.getByLabel("Start with").selectOption("footprintExample");
    await page.getByRole("button", { name: "Build takeoff" }).click();
    await page
      .getByRole("status")
      .filter({ hasText: 'Added "Roof", "Takeoff 2", "Order 2", and "Trim cuts 2".' })
      .waitFor();
    await showPlace(page, "Picture");
    const plan = page.locator(".picture desc").first();
    await plan.filter({ hasText: "5 planes" }).waitFor({ state: "attached" });
    await page.getByRole("slider", { name: "Turn" }).press("ArrowRight");
    expect(await page.locator(".picture svg").count()).toBe(2);
    for (const name of ["plan", "view"]) {
      await page.getByRole("button", { name: `Insert ${name}` }).click();
      await page
        .getByRole("status")
        .filter({ hasText: `The ${name} is on "Roof"` })
        .waitFor();
    }
    await goTo(page, "D11");
    await page.keyboard.press("Delete");
    await plan.filter({ hasText: "6 planes" }).waitFor({ state: "attached" });
    await page.getByText("Takeoff 2", { exact: true }).click();
    expect(await shownAt(page, "A12")).toBe("Plane 6");
    await page
      .locator(".picture desc")
      .filter({ hasText: "courses laid from the left" })
      .waitFor({ state: "attached" });
    expect(complaints).toEqual([]);
  });

  it.each([
    ["light", { colorScheme: "light" }],
    ["dark", { colorScheme: "dark" }],
    ["narrow", { viewport: { width: 320, height: 800 } }],
  ] as const)("has no fault that axe finds in the pane: %s", async (_, options) => {
    const { page } = await visit(options);
    for (const folded of ["Change orders", "Training class"]) await unfold(page, folded);
    await page.getByRole("heading", { name: "Marking" }).waitFor();
    expect(await axeFaults(page, "#pane")).toEqual([]);
    for (const [place, action] of [
      ["Functions", "Use selection for Slope length (ft)"],
      ["Extend", "Read the selection"],
      ["Picture", "Find the best start"],
    ] as const) {
      await showPlace(page, place);
      await page.getByRole("button", { name: action }).waitFor();
      expect(await axeFaults(page, "#pane")).toEqual([]);
    }
  });

  it("switches between the pane's sections with the arrow keys, and keeps unfinished input", async () => {
    const { page } = await visit();
    await page.getByLabel("Job name").fill("porch");
    await page.getByRole("tab", { name: "Sheets" }).focus();
    await page.keyboard.press("ArrowRight");
    await page.getByRole("heading", { name: "Find a function" }).waitFor();
    await page.keyboard.press("End");
    await page.getByRole("heading", { name: "Picture" }).waitFor();
    await page.keyboard.press("ArrowRight");
    expect(await page.getByLabel("Job name").inputValue()).toBe("porch");
  });

  it("finds, fills in, inserts and undoes a function with the keyboard alone", async () => {
    const { page, complaints } = await visit();
    await goTo(page, "O29");
    await page.keyboard.press("F6");
    await tabTo(page, "Sheets");
    await page.keyboard.press("ArrowRight");
    await page.getByRole("button", { name: "Insert into O29" }).waitFor();
    await tabTo(page, "function-search");
    await page.keyboard.type("clips along");
    await tabTo(page, "argument-lengthFt");
    await page.keyboard.type("60");
    await tabTo(page, "argument-spacingIn");
    await page.keyboard.type("12");
    await page.getByText("Result: 61 clips").waitFor();
    await tabTo(page, 'Insert into O29 on "Takeoff"');
    await page.keyboard.press("Enter");
    await page.getByRole("status").filter({ hasText: 'Wrote the formula into O29 on "Takeoff".' }).waitFor();
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Undo");
    await page.keyboard.press("Enter");
    await page.getByRole("status").filter({ hasText: "Undone: the cell is as it was." }).waitFor();
    expect(await shownAt(page, "O29")).toBe("blank");
    expect(complaints).toEqual([]);
  });

  it("finds the best start, and inserts and removes the picture, with the keyboard alone", async () => {
    const { page, complaints } = await visit();
    const status = (sentence: string) => page.getByRole("status").filter({ hasText: sentence });
    await page.keyboard.press("F6");
    await tabTo(page, "Sheets");
    await page.keyboard.press("End");
    await page.getByRole("button", { name: "Find the best start" }).waitFor();
    await tabTo(page, "Large picture");
    await page.keyboard.press("Space");
    expect(await page.locator(".picture.large").count()).toBe(1);
    await tabTo(page, "Find the best start");
    await page.keyboard.press("Enter");
    await status("starts compared").waitFor();
    await tabTo(page, "Insert picture");
    await page.keyboard.press("Enter");
    await status('The picture is on "Takeoff"').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Insert picture");
    await tabTo(page, "Undo");
    await page.keyboard.press("Enter");
    await status("Undone: the picture was removed.").waitFor();
    expect(complaints).toEqual([]);
  });

  it("finds a function, fills it with cells, previews its result, inserts it and undoes it", async () => {
    const { page, complaints } = await visit();
    await showPlace(page, "Functions");
    await page.getByLabel("Search by name or by what it does").fill("clips along");
    await goTo(page, "C29");
    await page.getByRole("button", { name: "Use selection for Length (ft)" }).click();
    const spacing = page.getByRole("textbox", { name: "Spacing (in)" });
    await spacing.fill("none");
    await page.getByText("spacing takes a length in inches such as 12, or text with its unit").waitFor();
    await spacing.fill("12");
    await goTo(page, "O29");
    await page.getByText("Result: 61 clips").waitFor();
    // A double click writes once: the second click is ignored.
    await page.getByRole("button", { name: 'Insert into O29 on "Takeoff"' }).dblclick();
    await page.getByRole("status").filter({ hasText: 'Wrote the formula into O29 on "Takeoff".' }).waitFor();
    expect(await shownAt(page, "O29")).toBe("61");
    await page.locator("#place-functions").getByRole("button", { name: "Undo" }).click();
    await page.getByRole("status").filter({ hasText: "Undone: the cell is as it was." }).waitFor();
    expect(await shownAt(page, "O29")).toBe("blank");
    // A cell with content is never overwritten.
    await goTo(page, "C29");
    await page.getByRole("button", { name: 'Insert into C29 on "Takeoff"' }).click();
    await page.getByRole("status").filter({ hasText: "C29 holds 60. Nothing was written." }).waitFor();
    expect(complaints).toEqual([]);
  });

  it("shows the new name of the selected cell's sheet as soon as it is renamed", async () => {
    const { page, complaints } = await visit();
    await goTo(page, "B2");
    await page.locator(".cell dt", { hasText: "Takeoff, B2" }).waitFor();
    await page.locator("[data-u-comp='slide-tab-item']").first().dblclick();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("Porch");
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: "Porch, B2" }).waitFor();
    expect(complaints).toEqual([]);
  });
});
