import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { WEB } from "../../src/build/paths";
import { serve, type RunningServer } from "../../src/server/server";
import { saveXlsx } from "../../src/xlsx/xlsxFile";
import { localCatalog } from "../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../src/hosts/local/workbook/headless";
import { a1 } from "../../src/workbook/address";
import {
  amountCell,
  AMOUNTS,
  changeCell,
  FIRST_LINE_ROW,
  termCell,
  type Amount,
  type Term,
} from "../../src/sheets/changeOrder/changeOrderLayout";
import type { WorkbookPlan } from "../../src/workbook/plan";
import { takeoffPlan, USUAL_NAMES } from "../../src/sheets/newJob/takeoffPlan";
import { HAND_COUNTED } from "../support/bid";
import { describeInBrowser, launch } from "../support/browser";
import { FIRST_AMOUNTS, FIRST_LINES, SECOND_AMOUNTS } from "../support/changesByHand";
import { enter, goTo, shownAt, unfold, visit } from "../support/localPage";

jest.setTimeout(120_000);

const said = (page: Page, text: string): Promise<void> =>
  page.getByRole("status").filter({ hasText: text }).waitFor();

const showSheet = (page: Page, name: string): Promise<void> =>
  page.getByText(name, { exact: true }).first().click();

/** Picks a word of a cell's list. */
const choose = async (page: Page, address: string, word: string): Promise<void> => {
  await goTo(page, address);
  await page.keyboard.press("F2");
  await page.getByText(word, { exact: true }).last().click();
  await shows(page, address, word);
};

/** Waits for a result, as a person would: a sheet that is new is calculated a moment later. */
const shows = async (page: Page, address: string, expected: string): Promise<void> => {
  await goTo(page, address);
  await page.locator(".cell-shows", { hasText: expected }).waitFor();
};

const showsExactly = async (page: Page, address: string, expected: string): Promise<void> => {
  await goTo(page, address);
  await page.locator(`.cell-shows:text-is("${expected}")`).waitFor();
};

/** As a person types an address. */
const plain = (address: string): string => address.replaceAll("$", "");

/** The workbook of a plan as it is saved here, calculated. */
const savedBid = async (plan: WorkbookPlan): Promise<Buffer> => {
  const engine = createHeadlessEngine(localCatalog, plan);
  await engine.calculated();
  const file = saveXlsx(undefined, engine.book());
  engine.dispose();
  return Buffer.from(file);
};

describeInBrowser("change orders in the local workbook", () => {
  let browser: Browser;
  let server: RunningServer;

  beforeAll(async () => {
    server = await serve(WEB, 3170);
    browser = await launch();
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  it("go from a signed base over a change and back to the journal, and no typing moves what was signed", async () => {
    const { page, complaints } = await visit(browser, server.address);
    await unfold(page, "Change orders");
    const freeze = page.locator('section[aria-labelledby="freeze-title"]');
    await freeze.getByLabel("Date").fill("2026-06-01");
    await freeze.getByRole("button", { name: "Freeze the order" }).click();
    await said(page, 'Added "Signed 1".');
    await freeze.getByRole("button", { name: "Undo" }).click();
    await said(page, "Undone: the sheets were removed. Nothing else was changed.");
    await freeze.getByRole("button", { name: "Freeze the order" }).click();
    await said(page, 'Added "Signed 1".');
    await shows(page, "B5", "as signed");
    // What was signed keeps its name: other sheets speak of it.
    const tab = page.locator("[data-u-comp=slide-tab-item]", { hasText: "Signed 1" });
    await tab.dblclick();
    // No faster than a person: within half a second of the press the engine takes a name for the start of a drag.
    await page.keyboard.type("June", { delay: 200 });
    await page.keyboard.press("Enter");
    await page.getByText('"Signed 1" is signed, so it keeps its name').waitFor();
    await tab.waitFor();
    expect(await page.getByRole("dialog").count()).toBe(0);
    expect(await shownAt(page, "G13")).toBe("94");
    await page.keyboard.press("Control+z");
    await page.getByText('That would remove "Signed 1", which is signed. Nothing was changed.').waitFor();
    expect(await shownAt(page, "G13")).toBe("94");
    await page.keyboard.type("12");
    await page.keyboard.press("Enter");
    expect(await shownAt(page, "G13")).toBe("94");
    await shows(page, "B5", "as signed");

    // 72 ft of ridge, in 120 in that lap 2: 8 pieces for 7, 19.80 each. Clips 12 in apart on both edges: 146 for 122, and
    // with 60 along the gables 206: 3 boxes for 2, 14.50 each.
    await showSheet(page, "Takeoff");
    await enter(page, "C53", "72");
    const change = page.locator('section[aria-labelledby="change-order-title"]');
    await change.getByLabel("Date").fill("2026-06-20");
    await change.getByRole("button", { name: "Make change order" }).click();
    await said(page, 'Added "Change order 1" and "Signed 2".');
    await shows(page, "M27", "34.3");
    expect(await shownAt(page, "B11")).toBe("changed");
    expect(await shownAt(page, "B36")).toBe(`ridge length 60' 0" to 72' 0": 1 more stock length`);

    const issue = page.locator('section[aria-labelledby="issue-title"]');
    await issue.getByRole("button", { name: "Issue the change order" }).click();
    await said(page, 'Issued "Change order 1" under the seal ');
    // A reason is nobody's figure: nothing is worked out from it, and the seal leaves it free.
    await goTo(page, "R11");
    await page.keyboard.type("a longer ridge");
    await page.keyboard.press("Enter");
    await shows(page, "R11", "a longer ridge");
    await page.keyboard.press("Control+z");
    await shows(page, "R11", "blank");
    await page.keyboard.press("Control+z");
    await page.getByText('That would remove the seal of "Change order 1", which is issued').waitFor();
    expect(await shownAt(page, "A4")).toBe("blank");
    await enter(page, "N11", "2");
    await shows(
      page,
      "A4",
      `"Change order 1" was edited since it was issued: its seal doesn't fit its figures any more`,
    );
    await enter(page, "N11", "0");
    await issue.getByRole("button", { name: "Undo" }).click();
    await said(page, "Undone: the seal is gone, and nothing else has changed.");

    await showSheet(page, "Takeoff");
    await enter(page, "C53", "60");
    expect(await change.getByLabel("Base").inputValue()).toBe("Signed 2");
    await change.getByLabel("Now").selectOption({ label: "the order, as a draft" });
    await change.getByRole("button", { name: "Make change order" }).click();
    await said(page, 'Added "Draft change order 1".');
    await shows(page, "M27", "-34.3");
    expect(await shownAt(page, "M28")).toBe("34.3");
    expect(await shownAt(page, "M29")).toBe("0");

    const ledger = page.locator('section[aria-labelledby="ledger-title"]');
    expect(await ledger.getByLabel("Change order").locator("option").allTextContents()).toEqual([
      "Change order 1",
    ]);
    await ledger.getByRole("button", { name: "Write ledger lines" }).click();
    await said(page, 'The account for "Billed" is missing. Nothing was written.');
    for (const [label, account] of [
      ["Billed", "1200"],
      ["Held back", "1250"],
      ["Contract revenue", "4000"],
      ["Sales tax payable", "2200"],
    ] as const)
      await ledger.getByLabel(label).fill(account);
    await ledger.getByRole("button", { name: "Write ledger lines" }).click();
    await said(page, 'Added "Ledger 1".');
    await shows(page, "D9", "34.3");
    expect(await shownAt(page, "E5")).toBe("blank");
    const download = page.waitForEvent("download");
    await ledger.getByRole("button", { name: 'Save "Ledger 1" as .csv' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe("Ledger 1.csv");
    expect((await readFile(await file.path(), "utf8")).split("\r\n")).toEqual([
      "\uFEFFDate,Account,Memo,Debit,Credit",
      "2026-06-20,1200,Change order 1: Billed,34.30,",
      "2026-06-20,4000,Change order 1: Contract revenue,,34.30",
    ]);
    expect(complaints).toEqual([]);
  });

  it("agree with the table worked out by hand: a pitch and a plane changed, and then an eave and a price", async () => {
    const { page, complaints } = await visit(browser, server.address);
    const plan = takeoffPlan(HAND_COUNTED, USUAL_NAMES);
    await page.getByLabel("Open .xlsx").setInputFiles({
      name: "bid.xlsx",
      mimeType: "application/octet-stream",
      buffer: await savedBid(plan),
    });
    await said(page, "Opened bid.xlsx");
    /** Where something stands so many columns beside its label. */
    const beside = (sheet: string, label: string, columns: number): string => {
      const cell = plan.sheets
        .find(({ name }) => name === sheet)
        ?.cells.find(({ content }) => content?.kind === "text" && content.text === label);
      if (!cell) throw new Error(`no ${label} on ${sheet}`);
      return a1({ row: cell.row, column: cell.column + columns });
    };
    await unfold(page, "Change orders");
    const freeze = page.locator('section[aria-labelledby="freeze-title"]');
    await freeze.getByRole("button", { name: "Freeze the order" }).click();
    await said(page, 'Added "Signed 1".');

    const change = page.locator('section[aria-labelledby="change-order-title"]');
    const makeChangeOrder = async (number: number): Promise<void> => {
      await change.getByRole("button", { name: "Make change order" }).click();
      await said(page, `Added "Change order ${number}" and "Signed ${number + 1}".`);
    };
    const lines = FIRST_LINES.length;
    const typeTerms = async (terms: Partial<Record<Term, string>>): Promise<void> => {
      for (const [term, typed] of Object.entries(terms))
        await enter(page, plain(termCell(lines, term as Term)), typed);
    };
    const expectAmounts = async (expected: Readonly<Record<string, number>>): Promise<void> => {
      for (const amount of Object.keys(AMOUNTS) as Amount[])
        await showsExactly(page, plain(amountCell(lines, amount)), String(expected[AMOUNTS[amount]]));
    };

    await showSheet(page, "Takeoff");
    await enter(page, beside("Takeoff", "Plane A", 6), "16");
    await enter(page, beside("Takeoff", "Plane B", 4), `19' 6"`);
    await makeChangeOrder(1);
    await typeTerms({
      overheadRate: "10%",
      profitRate: "5%",
      taxRate: "7.25%",
      retainageRate: "10%",
      days: "2",
      contract: "25,000.00",
    });
    await enter(page, changeCell(FIRST_LINE_ROW, "laborEach"), "21.5");
    await expectAmounts(FIRST_AMOUNTS);
    await typeTerms({ date: "2026-06-20" });
    await showsExactly(page, plain(termCell(lines, "date")), "2026-06-20");

    await showSheet(page, "Takeoff");
    await enter(page, beside("Takeoff", "Plane B", 2), "30");
    await showSheet(page, "Trims");
    await enter(page, beside("Trims", "ridge", 11), "21.15");
    await makeChangeOrder(2);
    await choose(page, plain(termCell(lines, "deductions")), "given back");
    await choose(page, plain(termCell(lines, "taxRounding")), "on the total");
    await typeTerms({ days: "3" });
    await expectAmounts(SECOND_AMOUNTS);
    expect(complaints).toEqual([]);
  });
});
