import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { enter, goTo, shownAt, typeRows, visit } from "../support/localPage";

jest.setTimeout(60_000);

/** The pace of a fast typist: the editor handles each key, not a burst of them. */
const KEYSTROKE_MS = 25;

/** Each test has cells of its own, so that they share one page. */
describeInBrowser("cells of the local workbook", () => {
  let browser: Browser;
  let server: RunningServer;
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    server = await serve(WEB, 3250);
    browser = await launch();
    ({ page, complaints } = await visit(browser, server.address));
  });

  afterEach(() => {
    expect(complaints).toEqual([]);
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it("keeps every letter that is typed quickly into a cell with a list, and every quote in a formula", async () => {
    for (let tries = 0; tries < 3; tries++) {
      await enter(page, "B7", "triangle");
      expect(await shownAt(page, "B7")).toBe("triangle");
      await enter(page, "B7", "rectangle");
      expect(await shownAt(page, "B7")).toBe("rectangle");
    }
    await enter(page, "R40", `=GABLE.COURSES("18' 6 1/2""",12)`);
    expect(await shownAt(page, "R40")).toBe("19");
  });

  it("keeps every digit of a number that shows fewer when its cell is opened and left", async () => {
    await typeRows(page, "R", 50, [["7%"]]);
    await typeRows(page, "R", 50, [["7.2567%"]]);
    await goTo(page, "R50");
    await page.keyboard.press("F2");
    await page.keyboard.press("Enter");
    expect(await shownAt(page, "R50")).toBe("7.2567%");

    await typeRows(page, "R", 51, [["2026-06-12"]]);
    expect(await shownAt(page, "R51")).toBe("2026-06-12");
  });

  it("explains the spreadsheet's own errors", async () => {
    await enter(page, "R60", "=GABLE.COURSE(20,12)");
    await enter(page, "R61", "=R60+1");
    expect(await shownAt(page, "R61")).toBe("#NAME?");
    expect(await page.locator(".cell-sentence").textContent()).toBe(
      "Comes from R60: There is no function GABLE.COURSE: did you mean GABLE.COURSES?",
    );
  });

  it("completes a function's name and shows its parameters while typing", async () => {
    await goTo(page, "N20");
    await page.keyboard.type("=GABLE.CLI", { delay: KEYSTROKE_MS });
    await page.getByText("GABLE.CLIPCOUNT").first().waitFor();
    await page.keyboard.type("PCOUNT(", { delay: KEYSTROKE_MS });
    await page.getByText("lengthFt").first().waitFor();
    await page.keyboard.type("20,12)", { delay: KEYSTROKE_MS });
    // The list of names was open a moment ago: Enter commits what was typed.
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", N21" }).waitFor();
    expect(await shownAt(page, "N20")).toBe("21");
  });

  it("highlights the first function of each list, whichever was chosen from the previous one", async () => {
    await goTo(page, "N24");
    await page.keyboard.type("=GABLE.HIP", { delay: KEYSTROKE_MS });
    await page.getByText("GABLE.HIPLENGTH").first().waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Tab");
    // The engine moves the caret behind the name a little later; on a busy machine, later still.
    await page.waitForTimeout(700);
    await page.keyboard.type("10,6)", { delay: KEYSTROKE_MS });
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", N25" }).waitFor();
    // This list has one function.
    await page.keyboard.type("=GABLE.PITCHA", { delay: KEYSTROKE_MS });
    await page.getByText("GABLE.PITCHANGLE").first().waitFor();
    await page.keyboard.press("Enter");
    await page.waitForTimeout(700);
    await page.keyboard.type("12)", { delay: KEYSTROKE_MS });
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", N26" }).waitFor();
    expect(await shownAt(page, "N24")).toBe("15");
    expect(await shownAt(page, "N25")).toBe("45");
  });

  it("returns to the sheet with F6, ready for typing", async () => {
    await goTo(page, "N30");
    await page.keyboard.press("F6");
    expect(await page.evaluate(() => document.activeElement?.closest("#pane") !== null)).toBe(true);
    await page.keyboard.press("F6");
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", N31" }).waitFor();
    expect(await shownAt(page, "N30")).toBe("7");
  });

  it("shows the formula of every cell that was filled", async () => {
    await typeRows(page, "R", 70, [["14", "=R70*2"], ["15"], ["16"]]);
    await goTo(page, "S70:S72");
    await page.keyboard.press("Control+d");
    expect(await shownAt(page, "S72")).toBe("32");
    expect(await page.locator(".cell-formula").textContent()).toBe("=R72*2");
  });

  it("keeps a formula when its cell is opened and left", async () => {
    const before = await shownAt(page, "M7");
    await page.keyboard.press("F2");
    await page.keyboard.press("Enter");
    await page.locator(".cell dt", { hasText: ", M8" }).waitFor();
    expect(await shownAt(page, "M7")).toBe(before);
  });

  it("explains an error in the selected cell", async () => {
    await enter(page, "G7", "steep");
    expect(await shownAt(page, "J7")).toBe("#VALUE!");
    expect(await page.locator(".cell-sentence").textContent()).toMatch(
      /^pitch takes a pitch such as 6 .*, got "steep"$/,
    );
    expect(await page.locator(".cell-formula").textContent()).toContain("GABLE.RAFTERLENGTH(F7,G7)");
  });

  it("follows an error to the cell that it comes from", async () => {
    await enter(page, "G7", "steep");
    expect(await shownAt(page, "K11")).toBe("#VALUE!");
    expect(await page.locator(".cell-sentence").textContent()).toMatch(
      /^Comes from [A-Z]+7: pitch takes a pitch .*got "steep"$/,
    );
  });
});
