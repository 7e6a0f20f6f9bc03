import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { ROOT } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { shownAt, visit } from "../support/localPage";

jest.setTimeout(400_000);

const SITE = "https://tools.example/gablewright/";

describeInBrowser("a package for a static host", () => {
  let browser: Browser;
  let server: RunningServer;
  const folder = mkdtempSync(join(tmpdir(), "gablewright-package-"));

  beforeAll(async () => {
    execFileSync(
      process.execPath,
      [join(ROOT, "node_modules/tsx/dist/cli.mjs"), "src/build/package.ts", "--site", SITE, "--out", folder],
      { cwd: ROOT, stdio: "pipe" },
    );
    server = await serve(folder, 3900);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  });

  it("says where it is served, what is in it, and under which licenses", () => {
    const textOf = (path: string): string => readFileSync(join(folder, path), "utf8");
    expect(textOf("manifest.xml")).toContain(`DefaultValue="${SITE}taskpane.html"`);
    expect(textOf("functions.json")).toContain(`"helpUrl": "${SITE}help/COURSES.html"`);
    expect(textOf("LICENSE")).toContain("MIT License");
    const { components } = JSON.parse(textOf("sbom.json")) as { components: { name: string }[] };
    const notice = textOf("third-party.txt");
    expect(components.map(({ name }) => name)).toContain("@univerjs/core");
    for (const { name } of components) expect(notice).toContain(`${name} `);
  });

  it("stamps every script and style sheet that its pages name", () => {
    for (const page of ["index.html", "taskpane.html", "help/index.html", "help/COURSES.html"]) {
      const tags =
        readFileSync(join(folder, page), "utf8").match(/<script\b[^>]*>|<link [^>]*stylesheet[^>]*>/g) ?? [];
      expect(tags.length).toBeGreaterThan(1);
      for (const tag of tags) expect([page, tag]).toEqual([page, expect.stringContaining("sha384-")]);
    }
  });

  it("opens without a network after the first visit, and calculates", async () => {
    const { page, complaints } = await visit(browser, server.address, { serviceWorkers: "allow" });
    const online = await shownAt(page, "B4");
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.context().setOffline(true);
    await page.reload();
    await page.waitForSelector('[data-grid="painted"]');
    expect(await shownAt(page, "B4")).toBe(online);
    await page.goto(`${server.address}help/COURSES.html`);
    await page.getByText("=GABLE.COURSES(").first().waitFor();
    expect(complaints).toEqual([]);
    // Excel opens the pane with parameters of its own; outside Excel Office.js complains, and asks for a page of Microsoft's.
    await page.goto(`${server.address}taskpane.html?et=1`);
    await page.getByText("it opens inside Excel").waitFor();
    await page.context().close();
  });

  it("runs no file that was changed on its host", async () => {
    // The length stays the same, so that only the digest tells the files apart.
    const script = join(folder, "local.js");
    const own = readFileSync(script, "utf8");
    writeFileSync(script, own.replace('"workbook"', '"Workbook"'));
    expect(readFileSync(script, "utf8")).not.toBe(own);
    const page = await browser.newPage();
    const refused = page.waitForEvent("console", {
      predicate: (message) => message.text().includes("Failed to find a valid digest"),
    });
    await page.goto(server.address);
    expect((await refused).text()).toContain("local.js");
    expect(await page.locator("#workbook").innerHTML()).toBe("");
    await page.context().close();
  });
});
