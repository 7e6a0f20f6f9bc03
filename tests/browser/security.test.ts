import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { describeInBrowser, launch } from "../support/browser";
import { visit } from "../support/localPage";

jest.setTimeout(90_000);

/** What a script in the page can do, found out by trying. */
const tryIn = (page: Page, elsewhere: string): Promise<Record<string, boolean>> =>
  page.evaluate(async (address) => {
    const happens = (act: () => void): Promise<boolean> =>
      new Promise((resolve) => {
        const answer = (does: boolean) => (): void => {
          resolve(does);
        };
        document.addEventListener("securitypolicyviolation", answer(false), { once: true });
        act();
        setTimeout(answer(true), 1_000);
      });
    const add = (name: string, properties: object) => (): void => {
      document.body.append(Object.assign(document.createElement(name), properties));
    };
    return {
      "run an inline script": await happens(add("script", { textContent: "window.ran = true" })),
      "run a text as script": await happens(() => {
        try {
          new Function("return 1")();
        } catch {
          // The event reports it.
        }
      }),
      "load a script from elsewhere": await happens(add("script", { src: `${address}x.js` })),
      "load a picture from elsewhere": await happens(add("img", { src: `${address}x.png` })),
      "send to elsewhere": await happens(() => {
        fetch(address, { method: "POST", body: "cells" }).catch(() => undefined);
      }),
      "show a page from elsewhere": await happens(add("iframe", { src: address })),
      "load a plug-in": await happens(add("object", { data: `${address}x.svg` })),
    };
  }, elsewhere);

describeInBrowser("what a page of ours may do", () => {
  let browser: Browser;
  let server: RunningServer;
  let other: RunningServer;

  beforeAll(async () => {
    [server, other] = [await serve(WEB, 3400), await serve(WEB, 3450)];
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    await other.close();
  });

  const expectNothing = async (page: Page): Promise<void> => {
    const tried = await tryIn(page, other.address);
    expect(Object.entries(tried).filter(([, happens]) => happens)).toEqual([]);
    expect(Object.keys(tried)).toHaveLength(7);
  };

  it("the local workbook runs only its own scripts, and sends nothing anywhere", async () => {
    const { page, complaints } = await visit(browser, server.address);
    expect(complaints).toEqual([]);
    await expectNothing(page);
    await page.close();
  });

  it("so does a help page", async () => {
    const page = await browser.newPage();
    await page.goto(new URL("help/COURSES.html", server.address).href);
    await expectNothing(page);
    await page.close();
  });
});
