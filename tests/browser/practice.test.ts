import { readFile } from "node:fs/promises";
import { unzipSync } from "fflate";
import type { Browser } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { practiceFiles } from "../../src/practice/files/practiceFiles";
import { versionsOf, type ClassOptions } from "../../src/practice/class/classOptions";
import { problemsOf } from "../../src/practice/class/practiceClass";
import { TOPIC_IDS } from "../../src/practice/topics/index";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { showPlace, unfold, visit, type Visit } from "../support/localPage";

jest.setTimeout(180_000);

const CLASS: ClassOptions = {
  seed: "2611",
  level: "half day",
  units: "feet and inches",
  set: { kind: "topics", topics: TOPIC_IDS, problems: TOPIC_IDS.length },
  versions: 2,
};

/** The color of a tape's pointer. */
const POINTER = [140, 36, 22] as const;

/** In the page: how many dots of a color the grid shows. */
const dotsInGrid = ([red, green, blue]: readonly [number, number, number]): number => {
  let dots = 0;
  for (const canvas of document.querySelectorAll<HTMLCanvasElement>("#workbook canvas")) {
    const { width, height } = canvas;
    if (width * height === 0) continue;
    const copy = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true });
    copy?.drawImage(canvas, 0, 0);
    const data = copy?.getImageData(0, 0, width, height).data ?? [];
    for (let at = 0; at < data.length; at += 4)
      if (data[at] === red && data[at + 1] === green && data[at + 2] === blue) dots++;
  }
  return dots;
};

describeInBrowser("a class in the browser", () => {
  let browser: Browser;
  let server: RunningServer;
  let visited: Visit;
  let files: Readonly<Record<string, Uint8Array>> = {};

  beforeAll(async () => {
    server = await serve(WEB, 3350);
    browser = await launch();
    visited = await visit(browser, server.address);
    await unfold(visited.page, "Training class");
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it("is downloaded, and is the same as Node builds", async () => {
    const { page } = visited;
    await page.getByLabel("Seed").fill(CLASS.seed);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Build and download" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("practice-2611.zip");
    files = unzipSync(await readFile(await download.path()));
    const inNode = [...practiceFiles(CLASS)];
    expect(Object.keys(files)).toEqual(inNode.map(({ name }) => name));
    for (const { name, bytes } of inNode)
      expect([name, Buffer.compare(Buffer.from(files[name] ?? []), bytes)]).toEqual([name, 0]);
  });

  it("is marked from its files", async () => {
    const { page } = visited;
    await page.getByLabel("Students' files").setInputFiles(
      ["A", "B"].map((version) => ({
        name: `${version}.xlsx`,
        mimeType: "application/octet-stream",
        buffer: Buffer.from(files[`practice-2611-${version}.xlsx`] ?? []),
      })),
    );
    const asked = versionsOf(CLASS)
      .flatMap(problemsOf)
      .flatMap(({ solution }) => solution.answers);
    await page.getByText(`2 students, ${asked.length} answers, 0 % right.`).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("Undone: the sheets were removed").waitFor();
  });

  it("shows its pictures when opened, to view only", async () => {
    const { page, complaints } = visited;
    await page.getByLabel("Open .xlsx").setInputFiles({
      name: "A.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from(files["practice-2611-A.xlsx"] ?? []),
    });
    // Marking added sheets, and removed them again.
    await page.getByRole("button", { name: "Discard changes and open" }).click();
    const said = page.getByText(`Opened A.xlsx: ${1 + TOPIC_IDS.length} sheets.`);
    await said.waitFor();
    expect(await said.textContent()).not.toContain("drawings");
    expect(await page.evaluate(dotsInGrid, POINTER)).toBe(0);
    await page.getByText("1 Reading a tape", { exact: true }).first().click();
    await page.waitForFunction(dotsInGrid, POINTER);
    expect(await page.locator("#workbook").getAttribute("aria-description")).toBe(
      "Pictures on this sheet, at A10: A piece of tape with a pointer at one of its marks.",
    );
    // Behind the picture is a cell, and Delete empties that.
    await page.locator("#workbook").click({ position: { x: 200, y: 409 } });
    await page.locator(".cell dt", { hasText: "1 Reading a tape, A14" }).waitFor();
    await page.keyboard.press("Delete");
    expect(await page.evaluate(dotsInGrid, POINTER)).toBeGreaterThan(50);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    const saved = await readFile(await download.path());
    expect(Buffer.compare(saved, Buffer.from(files["practice-2611-A.xlsx"] ?? []))).toBe(0);
    expect(complaints).toEqual([]);
  });

  it("is checked page by page, with its pictures in the pane", async () => {
    const { page, complaints } = visited;
    await page.getByText("2 Pitch", { exact: true }).first().click();
    await page.locator(".cell dt", { hasText: "2 Pitch, A1" }).waitFor();
    await page.getByRole("button", { name: "Check active page" }).click();
    await page.getByText("0 of 3 answers right.").waitFor();
    await showPlace(page, "Picture");
    await page.getByRole("img", { name: "Pitch" }).waitFor();
    expect(complaints).toEqual([]);
  });
});
