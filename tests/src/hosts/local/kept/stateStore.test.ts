import { IDBFactory, IDBObjectStore } from "fake-indexeddb";
import "fake-indexeddb/auto";
import type { NewState } from "../../../../../src/hosts/local/kept/keptState";
import { openStateStore } from "../../../../../src/hosts/local/kept/stateStore";

const stateOf = (keptAt: number, workbook = "w1"): NewState => ({
  workbook,
  name: "Barn, north yard",
  keptAt,
  isInFile: false,
});
const file = (...bytes: number[]): Uint8Array => Uint8Array.from(bytes);

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

afterEach(() => {
  jest.restoreAllMocks();
});

describe("the store of kept states", () => {
  it("lists the newest first, and gives back each file, also after it is opened again", async () => {
    const store = await openStateStore();
    const first = await store.keep(stateOf(1), file(1, 2));
    const second = await store.keep(stateOf(2), file(3));
    const again = await openStateStore();
    expect(await again.list()).toEqual([second, first]);
    expect(first).toEqual({ ...stateOf(1), id: first.id, sizeBytes: 2 });
    expect(Array.from((await again.file(first.id)) ?? [])).toEqual([1, 2]);
    expect(await again.file(second.id + 1)).toBeUndefined();
  });

  it("drops states that are too many, and their files", async () => {
    const store = await openStateStore();
    const first = await store.keep(stateOf(0), file(0));
    for (let each = 1; each <= 11; each++) await store.keep(stateOf(each), file(each));
    const ids = (await store.list()).map(({ id }) => id);
    expect(ids).toHaveLength(11);
    expect(ids).not.toContain(first.id);
    expect(await store.file(first.id)).toBeUndefined();
  });

  it("notes that a file holds a state, and drops what it is told to", async () => {
    const store = await openStateStore();
    const { id } = await store.keep(stateOf(1), file(1));
    await store.markInFile(id, "Barn.xlsx");
    expect(await store.list()).toMatchObject([{ id, isInFile: true, fileName: "Barn.xlsx" }]);
    await store.markInFile(id + 1, "None.xlsx");
    await store.drop([id]);
    expect(await store.list()).toEqual([]);
  });

  it("makes room for a state by dropping older ones where the disk is full", async () => {
    const store = await openStateStore();
    const shed = await store.keep(stateOf(1, "shed"), file(9));
    await store.keep(stateOf(2), file(1));
    const barn = await store.keep(stateOf(3), file(2));
    const add = jest.spyOn(IDBObjectStore.prototype, "add");
    add.mockImplementationOnce(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    const kept = await store.keep(stateOf(4), file(3));
    expect((await store.list()).map(({ id }) => id)).toEqual([kept.id, barn.id, shed.id]);
  });

  it.each(["add", "put", "get", "getAll", "delete"] as const)(
    "keeps what was there before, whole, when a call of %s fails",
    async (step) => {
      const store = await openStateStore();
      for (let each = 0; each < 11; each++) await store.keep(stateOf(each), file(each));
      const before = await store.list();
      const original = IDBObjectStore.prototype[step] as (...args: unknown[]) => unknown;
      for (let failing = 1; failing <= 3; failing++) {
        let calls = 0;
        const spy = jest.spyOn(IDBObjectStore.prototype, step).mockImplementation(function (
          this: IDBObjectStore,
          ...args: unknown[]
        ) {
          calls++;
          if (calls === failing) throw new DOMException("broken", "UnknownError");
          return original.apply(this, args) as never;
        });
        await store.keep(stateOf(100), file(100)).catch(() => undefined);
        await store.markInFile(before[0]?.id ?? 0, "Barn.xlsx").catch(() => undefined);
        spy.mockRestore();
        const after = await store.list();
        expect(after.filter(({ keptAt }) => keptAt < 100).map(({ id }) => id)).toEqual(
          expect.arrayContaining(before.slice(0, 9).map(({ id }) => id)),
        );
        for (const { id, keptAt } of after)
          expect(Array.from((await store.file(id)) ?? [])).toEqual([keptAt]);
        await store.drop(after.filter(({ keptAt }) => keptAt === 100).map(({ id }) => id));
      }
    },
  );
});
