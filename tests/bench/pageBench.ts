import type { Browser, Page } from "playwright-core";
import { bundleSizes } from "../../src/build/bundleSizes";
import { WEB } from "../../src/build/paths";
import { serve } from "../../src/server/server";
import { chromiumPath, launchChromium } from "../support/chromium";
import { goTo } from "../support/goTo";
import { medianOf, type Measure } from "./measure";

const OPENINGS = 5;
/** An hour with one edit every five seconds. The first tenth fills the undo history. */
const EDITS_OF_AN_HOUR = 720;
const EDITS_BEFORE = EDITS_OF_AN_HOUR / 10;
/** The goal is no growth, but the undo history keeps something of every edit. */
const MOST_GROWTH = 1.1;

/** The eave of the first plane of the worked example. */
const EDITED = "C7";

const open = async (browser: Browser, address: string): Promise<Page> => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(address);
  await page.waitForSelector('[data-grid="painted"]');
  return page;
};

const firstGridMs = async (browser: Browser, address: string): Promise<number> => {
  const page = await open(browser, address);
  const ms = await page.evaluate(() => performance.getEntriesByName("grid-painted")[0]?.startTime ?? NaN);
  await page.close();
  return ms;
};

const heapMb = async (page: Page): Promise<number> => {
  const session = await page.context().newCDPSession(page);
  for (let pass = 0; pass < 2; pass++) await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  await session.detach();
  return usedSize / 2 ** 20;
};

/** Types into one cell again and again and waits for the calculation each time. */
const edit = async (page: Page, times: number): Promise<void> => {
  for (let edits = 0; edits < times; edits++) {
    await page.evaluate(() => {
      delete document.getElementById("workbook")?.dataset.calculatedAt;
    });
    await page.keyboard.type(String(50 + (edits % 20)));
    await page.keyboard.press("Enter");
    await page.waitForSelector("#workbook[data-calculated-at]");
    await page.keyboard.press("ArrowUp");
  }
};

const memory = async (browser: Browser, address: string): Promise<Measure[]> => {
  const page = await open(browser, address);
  await goTo(page, EDITED);
  await edit(page, EDITS_BEFORE);
  const before = await heapMb(page);
  await edit(page, EDITS_OF_AN_HOUR - EDITS_BEFORE);
  const after = await heapMb(page);
  await page.close();
  return [
    { name: `memory of the page after ${EDITS_BEFORE} edits`, value: before, unit: "MB" },
    {
      name: `memory of the page after ${EDITS_OF_AN_HOUR} edits`,
      value: after,
      unit: "MB",
      most: MOST_GROWTH * before,
    },
  ];
};

/** Bundle sizes, then opening time and memory in a browser. Needs `npm run build`, and Chromium for the second part. */
export const pageBench = async (): Promise<Measure[]> => {
  const sizes = bundleSizes(WEB).map(({ bundle, kb, mostKb }): Measure => ({
    name: `bundle: ${bundle}, gzipped`,
    value: kb,
    unit: "kB",
    most: mostKb,
  }));
  if (chromiumPath === undefined) return sizes;
  const server = await serve(WEB, 3970);
  const browser = await launchChromium();
  try {
    const grids: number[] = [];
    for (let opening = 0; opening < OPENINGS; opening++)
      grids.push(await firstGridMs(browser, server.address));
    return [
      ...sizes,
      {
        name: `first grid after the page's request, median of ${OPENINGS}`,
        value: medianOf(grids),
        unit: "ms",
      },
      ...(await memory(browser, server.address)),
    ];
  } finally {
    await browser.close();
    await server.close();
  }
};
