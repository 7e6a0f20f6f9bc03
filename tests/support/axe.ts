import { readFileSync } from "node:fs";
import type * as Axe from "axe-core";
import type { Page } from "playwright-core";

const SOURCE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds against WCAG 2.2 AA in the part of the page that a selector names. */
export const axeFaults = async (page: Page, within: string): Promise<string[]> => {
  // The page's policy lets no script be added to it; the browser's own console may still run one.
  await page.evaluate(SOURCE);
  return page.evaluate(async (selector) => {
    const { axe } = window as unknown as { axe: typeof Axe };
    const { violations } = await axe.run(selector, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, within);
};
