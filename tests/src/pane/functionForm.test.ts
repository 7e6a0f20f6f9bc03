/** @jest-environment jsdom */
import { h, render } from "preact";
import { coursesSpec } from "../../../functions/courses/courses";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { FunctionForm } from "../../../src/pane/functions/FunctionForm";
import type { Survey } from "../../../src/workbook/survey";
import { seen, show } from "../../support/card";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";
import { surveyOf } from "../../support/surveyOf";

const host = excelHost(fakeExcel(fakeWorkbook("Bid")), () =>
  Promise.reject(new Error("no picture was to be inserted")),
);
const formOn = (survey: Survey) => h(FunctionForm, { host, spec: coursesSpec, survey, onInsert: jest.fn() });
const TAKEN = "select a blank cell for the formula.";

const fill = async (form: HTMLElement, name: string, typed: string): Promise<void> => {
  const field = form.querySelector<HTMLInputElement>(`[name="argument-${name}"]`);
  if (!field) throw new Error(`no field ${name}`);
  field.value = typed;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  await new Promise((resolve) => setTimeout(resolve));
};

describe("the form of a function", () => {
  it("says of a cell that it is taken, unless it holds the formula itself", async () => {
    const form = show(formOn(surveyOf([[null]])));
    await fill(form, "slopeLengthFt", "20");
    await fill(form, "exposureIn", "12");
    await seen(form, "Result: 20 courses");
    const formula = form.querySelector(".cell-formula")?.textContent ?? "";
    expect(form.textContent).not.toContain(TAKEN);
    render(formOn(surveyOf([[{ formula, shows: 20 }]])), form);
    expect(form.textContent).not.toContain(TAKEN);
    render(formOn(surveyOf([["ridge"]])), form);
    expect(form.textContent).toContain(`A1 on "Bid" isn't blank: ${TAKEN}`);
  });
});
