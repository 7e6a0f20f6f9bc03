import * as fc from "fast-check";
import type { KeptState } from "../../../../../src/hosts/local/kept/keptState";
import { statesToDrop } from "../../../../../src/hosts/local/kept/statesToDrop";

const HOUR_MS = 3_600_000;

const stateOf = (id: number, workbook: string, keptAt: number, sizeBytes = 1_000): KeptState => ({
  id,
  workbook,
  name: workbook,
  keptAt,
  sizeBytes,
  isInFile: false,
});

const idsOf = (states: readonly KeptState[]): number[] =>
  states.map(({ id }) => id).sort((one, other) => one - other);

describe("states that are too many", () => {
  it("are those before the last ten, except the newest of each hour", () => {
    const lastTen = Array.from({ length: 10 }, (_, index) =>
      stateOf(100 + index, "barn", 5 * HOUR_MS + index),
    );
    const older = [
      stateOf(1, "barn", 2 * HOUR_MS),
      stateOf(2, "barn", 2 * HOUR_MS + 1),
      stateOf(3, "barn", 3 * HOUR_MS + 5),
      stateOf(4, "barn", 3 * HOUR_MS + 9),
    ];
    expect(idsOf(statesToDrop([...older, ...lastTen]))).toEqual([1, 3]);
  });

  it("are the oldest, of whichever workbook, where space runs out", () => {
    const states = [stateOf(1, "barn", 1, 40), stateOf(2, "shed", 2, 40), stateOf(3, "barn", 3, 40)];
    expect(idsOf(statesToDrop(states, 100))).toEqual([1]);
    expect(idsOf(statesToDrop(states, 10))).toEqual([1, 2]);
  });

  const states = fc
    .array(
      fc.record({
        workbook: fc.constantFrom("barn", "shed", "porch"),
        keptAt: fc.nat(40 * HOUR_MS),
        sizeBytes: fc.integer({ min: 1, max: 100 }),
      }),
      { minLength: 1, maxLength: 80 },
    )
    .map((all) => all.map(({ workbook, keptAt, sizeBytes }, id) => stateOf(id, workbook, keptAt, sizeBytes)));

  it("never include the newest of all, and leave no more than fits", () => {
    fc.assert(
      fc.property(states, fc.integer({ min: 100, max: 4_000 }), (all, mostBytes) => {
        const dropped = new Set(statesToDrop(all, mostBytes));
        const left = all.filter((state) => !dropped.has(state));
        const newest = Math.max(...all.map(({ keptAt }) => keptAt));
        expect(left.some(({ keptAt }) => keptAt === newest)).toBe(true);
        expect(left.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0)).toBeLessThanOrEqual(mostBytes);
      }),
    );
  });

  it("leave each workbook its last ten, and each of its hours a state, where there is space", () => {
    fc.assert(
      fc.property(states, (all) => {
        const dropped = new Set(statesToDrop(all));
        for (const workbook of new Set(all.map((state) => state.workbook))) {
          const own = all.filter((state) => state.workbook === workbook);
          const left = own.filter((state) => !dropped.has(state));
          expect(left.length).toBeGreaterThanOrEqual(Math.min(10, own.length));
          const hoursOf = (some: readonly KeptState[]) =>
            new Set(some.map(({ keptAt }) => Math.floor(keptAt / HOUR_MS)));
          expect(hoursOf(left)).toEqual(hoursOf(own));
        }
      }),
    );
  });
});
