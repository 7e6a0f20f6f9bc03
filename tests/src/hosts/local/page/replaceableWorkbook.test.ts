import { replaceableWorkbook } from "../../../../../src/hosts/local/page/replaceableWorkbook";
import type { PageWorkbook } from "../../../../../src/hosts/local/workbook/pageWorkbook";

/** A workbook that knows its last edit and tells its listeners of changes. */
const fakeWorkbook = (edit: number) => {
  const listeners = new Set<() => void>();
  const workbook = {
    lastEdit: () => edit,
    onChange: (listener: () => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  } as unknown as PageWorkbook;
  const change = (): void => {
    for (const listener of listeners) listener();
  };
  return { workbook, change };
};

test("the workbook on the page answers for the one that was opened last", () => {
  const { workbook, replace } = replaceableWorkbook(fakeWorkbook(1).workbook);
  expect(workbook.lastEdit()).toBe(1);
  replace(fakeWorkbook(2).workbook);
  expect(workbook.lastEdit()).toBe(2);
});

test("a listener hears the workbook that was opened last, until it stops", () => {
  const first = fakeWorkbook(1);
  const second = fakeWorkbook(2);
  const { workbook, replace } = replaceableWorkbook(first.workbook);
  let heard = 0;
  const stop = workbook.onChange(() => heard++);
  first.change();
  replace(second.workbook);
  second.change();
  expect(heard).toBe(2);
  stop();
  second.change();
  expect(heard).toBe(2);
});
