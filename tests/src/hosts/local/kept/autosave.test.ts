import { autosave, DELAY_MS } from "../../../../../src/hosts/local/kept/autosave";

/** A workbook that the test edits, and which takes a while to be kept. */
const page = (writeMs = 100) => {
  const listeners = new Set<() => void>();
  const kept: number[] = [];
  let edits = 0;
  const saving = autosave({
    onEdited: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    keep: async () => {
      const now = edits;
      await new Promise((resolve) => setTimeout(resolve, writeMs));
      kept.push(now);
    },
  });
  const edit = (): void => {
    edits++;
    for (const listener of listeners) listener();
  };
  return { saving, kept, edit };
};

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

describe("autosave", () => {
  it("keeps the workbook within two seconds of a change", async () => {
    const { kept, edit } = page();
    edit();
    await jest.advanceTimersByTimeAsync(DELAY_MS - 1);
    expect(kept).toEqual([]);
    await jest.advanceTimersByTimeAsync(2_000 - DELAY_MS);
    expect(kept).toEqual([1]);
  });

  it("keeps it again and again while somebody edits on", async () => {
    const { kept, edit } = page();
    for (let each = 0; each < 50; each++) {
      edit();
      await jest.advanceTimersByTimeAsync(100);
    }
    await jest.advanceTimersByTimeAsync(2_000);
    expect(kept.length).toBeGreaterThanOrEqual(4);
    expect(kept.at(-1)).toBe(50);
  });

  it("keeps one state after another, never two at once", async () => {
    const { kept, edit } = page(2_500);
    edit();
    await jest.advanceTimersByTimeAsync(DELAY_MS + 500);
    edit();
    await jest.advanceTimersByTimeAsync(30_000);
    expect(kept).toEqual([1, 2]);
  });

  it("keeps a large workbook less often, so that it doesn't hold up typing most of the time", async () => {
    const { kept, edit } = page(4_000);
    for (let each = 0; each < 1_200; each++) {
      edit();
      await jest.advanceTimersByTimeAsync(100);
    }
    expect(kept.length).toBeGreaterThanOrEqual(3);
    expect(kept.length * 4_000).toBeLessThanOrEqual(120_000 / 4);
  });

  it("doesn't write when nothing has changed", async () => {
    const { saving, kept } = page();
    await saving.flush();
    await jest.advanceTimersByTimeAsync(10_000);
    expect(kept).toEqual([]);
  });

  it("writes at once when it is told to, and waits for what is being written", async () => {
    const { saving, kept, edit } = page();
    edit();
    const flushed = saving.flush();
    await jest.advanceTimersByTimeAsync(100);
    await flushed;
    expect(kept).toEqual([1]);
    await jest.advanceTimersByTimeAsync(10_000);
    expect(kept).toEqual([1]);
  });

  it("writes no more after it was stopped", async () => {
    const { saving, kept, edit } = page();
    edit();
    saving.stop();
    edit();
    await jest.advanceTimersByTimeAsync(10_000);
    expect(kept).toEqual([]);
  });
});
