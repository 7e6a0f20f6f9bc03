import { watchWorkbook } from "../../../../src/hosts/excel/watchWorkbook";
import { fakeExcel, fakeWorkbook } from "../../../support/fakeExcel";

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

const watched = (failAfter?: number) => {
  const workbook = fakeWorkbook("Bid");
  workbook.failAfter = failAfter;
  let told = 0;
  const stop = watchWorkbook(fakeExcel(workbook), () => told++);
  const tell = (): void => workbook.handlers.forEach((handler) => void handler());
  return { workbook, stop, tell, told: () => told };
};

describe("a workbook in Excel that is watched, on a stand-in", () => {
  it("reports once at the start, then after every change", async () => {
    const { workbook, tell, told } = watched();
    await settled();
    expect(told()).toBe(1);
    expect(workbook.handlers.size).toBe(4);
    tell();
    expect(told()).toBe(5);
  });

  it("reports nothing and keeps no handlers once stopped", async () => {
    const { workbook, stop, tell, told } = watched();
    await settled();
    stop();
    tell();
    await settled();
    expect(told()).toBe(1);
    expect(workbook.handlers.size).toBe(0);
  });

  it("has none left where it is stopped before Excel has taken them", async () => {
    const { workbook, stop, told } = watched();
    stop();
    await settled();
    expect(told()).toBe(0);
    expect(workbook.handlers.size).toBe(0);
  });

  it("tells at first even where Excel takes no handlers, and can be stopped", async () => {
    const { workbook, stop, told } = watched(0);
    await settled();
    expect(told()).toBe(1);
    stop();
    await settled();
    expect(workbook.handlers.size).toBe(0);
  });
});
