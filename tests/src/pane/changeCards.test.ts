/** @jest-environment jsdom */
import { TextEncoder } from "node:util";
import { h, render } from "preact";
import { ChangeCards } from "../../../src/pane/change/ChangeCards";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { press } from "../../support/card";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";
import { smallOrder } from "../../support/smallOrder";

jest.setTimeout(60_000);

// Browsers have it; the stand-in of one that the test runs in doesn't.
globalThis.TextEncoder = TextEncoder;

/** Waits until something holds, as a person would. */
const until = async (holds: () => boolean, what: string): Promise<void> => {
  for (let wait = 0; wait < 400; wait++) {
    if (holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error(`never comes: ${what}; there is: ${document.body.textContent}`);
};

const cards = async () => {
  const workbook = fakeWorkbook();
  const excel = excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  );
  await excel.addSheets(smallOrder([["panels", 10, 100]]));
  document.body.innerHTML = "<div></div>";
  const element = document.body.firstElementChild as HTMLElement;
  let changed: () => void = () => undefined;
  // The stand-in has no events: the test tells when the workbook has changed.
  const host = {
    ...excel,
    watch: (listener: () => void) => {
      changed = listener;
      listener();
      return () => undefined;
    },
  };
  render(h(ChangeCards, { host, isShown: true }), element);
  return {
    workbook,
    host,
    press: (label: string, card?: string): void => {
      press(element.querySelector<HTMLElement>(`section[aria-labelledby="${card}-title"]`) ?? element, label);
    },
    says: (text: string) => until(() => element.textContent?.includes(text) ?? false, text),
    offers: async (name: string, option: string): Promise<void> => {
      changed();
      const select = (): HTMLSelectElement | null => element.querySelector(`select[name="${name}"]`);
      await until(() => select()?.value === option, option);
    },
    choose: (name: string, option: string): void => {
      const select = element.querySelector<HTMLSelectElement>(`select[name="${name}"]`);
      if (!select) throw new Error(`no list ${name}`);
      select.value = option;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    },
    fill: async (name: string, value: string): Promise<void> => {
      const input = element.querySelector<HTMLInputElement>(`input[name="${name}"]`);
      if (!input) throw new Error(`no field ${name}`);
      input.value = value;
      input.dispatchEvent(new Event("input", { bubbles: true }));
      // The card takes it up a moment later.
      await new Promise((resolve) => setTimeout(resolve, 20));
    },
  };
};

describe("the cards of change orders, beside Excel's stand-in", () => {
  it("freeze, compare and post; each says what it wrote", async () => {
    const { workbook, press, says, offers, fill } = await cards();
    press("Make change order");
    await says("Freeze an order first: a change order goes on from a signed base.");
    press("Write ledger lines");
    await says("Make a change order first: its total is what is posted.");
    await fill("freeze-date", "");
    press("Freeze the order");
    await says("Give a date first. Nothing was written.");
    await fill("freeze-date", "2026-06-01");
    press("Freeze the order");
    await says('Added "Signed 1". No other sheet was changed.');
    expect(workbook.sheets.find(({ name }) => name === "Signed 1")?.isProtected).toBe(true);
    await offers("change-base", "Signed 1");
    workbook.sheets[0]?.cells.set("G3", { formula: 13 });
    press("Make change order");
    await says('Added "Change order 1" and "Signed 2". No other sheet was changed.');
    press("Issue the change order");
    await says('Issued "Change order 1" under the seal ');
    await says('It shows no contract sum: "Contract sum as signed" was left blank.');
    // Apart from what was done, so that it is seen.
    expect([...document.querySelectorAll("[role=alert]")].map((alert) => alert.textContent)).toEqual([
      'It shows no contract sum: "Contract sum as signed" was left blank.',
    ]);
    press("Undo", "issue");
    await says("Undone: the seal is gone, and nothing else has changed.");
    press("Issue the change order");
    await says('Issued "Change order 1" under the seal ');
    press("Issue the change order");
    await says('"Change order 1" is issued already, under the seal ');
    // Pressed once too often, it can be taken back still.
    await says("Nothing was written. You can still undo the last change.");
    press("Undo", "issue");
    await says("Undone: the seal is gone, and nothing else has changed.");
    press("Issue the change order");
    await says('Issued "Change order 1" under the seal ');
    await offers("ledger-change-order", "Change order 1");
    await offers("change-base", "Signed 2");
    for (const use of ["receivable", "retainage", "revenue", "tax"]) await fill(`account-${use}`, "1000");
    press("Write ledger lines");
    await says('Added "Ledger 1". No other sheet was changed.');
    // Excel saves files itself.
    expect(document.body.textContent).not.toContain("as .csv");
  });

  it("offer for the ledger the change order in front, and the one before it where that is chosen", async () => {
    const { workbook, press, says, offers, choose } = await cards();
    press("Freeze the order");
    await says('Added "Signed 1".');
    for (const number of [1, 2]) {
      await offers("change-base", `Signed ${number}`);
      workbook.sheets[0]?.cells.set("G3", { formula: 10 + number });
      press("Make change order");
      await says(`Added "Change order ${number}" and "Signed ${number + 1}".`);
    }
    await offers("ledger-change-order", "Change order 2");
    workbook.active = "Change order 1";
    await offers("ledger-change-order", "Change order 1");
    workbook.active = "Order";
    await offers("ledger-change-order", "Change order 1");
    workbook.active = "Change order 2";
    await offers("ledger-change-order", "Change order 2");
    choose("ledger-change-order", "Change order 1");
    await offers("ledger-change-order", "Change order 1");
  });

  it("take a frozen order away again", async () => {
    const { host, press, says } = await cards();
    press("Freeze the order");
    await says('Added "Signed 1".');
    press("Undo");
    await says("Undone: the sheets were removed. Nothing else was changed.");
    expect((await host.existing()).sheets).toEqual(["Order"]);
  });
});
