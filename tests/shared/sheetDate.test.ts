import { isDateSerial, isoDate, serialOfIsoDate } from "../../shared/sheetDate";

describe("dates as spreadsheets count them", () => {
  it.each([
    // Shown in any spreadsheet: day 60 and after of the 1900 calendar.
    [36_526, "2000-01-01"],
    [46_174, "2026-06-01"],
    [45_351, "2024-02-29"],
  ])("%d is %s", (serial, date) => {
    expect(isoDate(serial)).toBe(date);
    expect(serialOfIsoDate(date)).toBe(serial);
  });

  it.each(["", "1 June 2026", "2026-13-01", "26-06-01", "+012026-06-01"])("%j isn't a date", (date) => {
    expect(serialOfIsoDate(date)).toBeUndefined();
  });

  it("reads a number as a date from 1990 to the end of 2099", () => {
    expect([32_874, 73_050, 73_050.75].map(isDateSerial)).toEqual([true, true, true]);
    expect([32_873.99, 73_051].map(isDateSerial)).toEqual([false, false]);
    expect([isoDate(32_874), isoDate(73_050)]).toEqual(["1990-01-01", "2099-12-31"]);
  });
});
