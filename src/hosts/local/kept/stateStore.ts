import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from "idb";
import type { KeptState, NewState } from "./keptState";
import { statesToDrop } from "./statesToDrop";

interface Schema extends DBSchema {
  states: { key: number; value: Omit<KeptState, "id"> & { id?: number } };
  /** The .xlsx file of each state, by the state's id. */
  files: { key: number; value: Uint8Array };
}

const NAME = "gablewright";

/** Kept states in the browser's own database. Each change is one transaction: if it fails, what was kept before stays. */
export interface StateStore {
  /** All states, the newest first. */
  list(): Promise<KeptState[]>;
  /** The state's .xlsx file; undefined if it was dropped meanwhile. */
  file(id: number): Promise<Uint8Array | undefined>;
  /** Adds a state, and drops those that are too many. */
  keep(state: NewState, file: Uint8Array): Promise<KeptState>;
  /** Notes that a file holds this state as well. */
  markInFile(id: number, fileName: string): Promise<void>;
  drop(ids: readonly number[]): Promise<void>;
}

const isOutOfSpace = (failure: unknown): boolean =>
  failure instanceof DOMException && failure.name === "QuotaExceededError";

const listIn = async (database: IDBPDatabase<Schema>): Promise<KeptState[]> =>
  ((await database.getAll("states")) as KeptState[]).sort(
    (one, other) => other.keptAt - one.keptAt || other.id - one.id,
  );

type Change = IDBPTransaction<Schema, ("states" | "files")[], "readwrite">;

/** Makes all of a change or none: a step that fails would otherwise leave those before it. */
const change = async <Result>(
  database: IDBPDatabase<Schema>,
  make: (transaction: Change) => Promise<Result>,
): Promise<Result> => {
  const transaction = database.transaction(["states", "files"], "readwrite");
  // A failure is reported by the step that failed.
  transaction.done.catch(() => undefined);
  try {
    const result = await make(transaction);
    await transaction.done;
    return result;
  } catch (failure) {
    try {
      transaction.abort();
    } catch {
      // The browser has aborted it already.
    }
    throw failure;
  }
};

const dropIn = async (transaction: Change, ids: readonly number[]): Promise<void> => {
  for (const id of ids) {
    await transaction.objectStore("states").delete(id);
    await transaction.objectStore("files").delete(id);
  }
};

const drop = (database: IDBPDatabase<Schema>, ids: readonly number[]): Promise<void> =>
  change(database, (transaction) => dropIn(transaction, ids));

const add = (
  database: IDBPDatabase<Schema>,
  state: Omit<KeptState, "id">,
  file: Uint8Array,
): Promise<KeptState> =>
  change(database, async (transaction) => {
    const states = transaction.objectStore("states");
    const id = await states.add(state);
    await transaction.objectStore("files").add(file, id);
    await dropIn(
      transaction,
      statesToDrop((await states.getAll()) as KeptState[]).map((old) => old.id),
    );
    return { ...state, id };
  });

/** All but the newest state of each workbook: they make room where the disk is full. */
const olderStates = (newestFirst: readonly KeptState[]): number[] => {
  const seen = new Set<string>();
  return newestFirst.flatMap(({ id, workbook }) => {
    const isOlder = seen.has(workbook);
    seen.add(workbook);
    return isOlder ? [id] : [];
  });
};

/** Opens the database. Rejects where the browser keeps nothing, as some private windows do. */
export const openStateStore = async (): Promise<StateStore> => {
  const database = await openDB<Schema>(NAME, 1, {
    upgrade: (created) => {
      created.createObjectStore("states", { keyPath: "id", autoIncrement: true });
      created.createObjectStore("files");
    },
    // A newer version of the page in another tab needs to change the database.
    blocking: (_current, _next, { target }) => {
      (target as IDBDatabase).close();
    },
  });
  return {
    list: () => listIn(database),
    file: (id) => database.get("files", id),
    keep: async (state, file) => {
      const kept = { ...state, sizeBytes: file.length };
      try {
        return await add(database, kept, file);
      } catch (failure) {
        if (!isOutOfSpace(failure)) throw failure;
        await drop(database, olderStates(await listIn(database)));
        return add(database, kept, file);
      }
    },
    markInFile: (id, fileName) =>
      change(database, async (transaction) => {
        const states = transaction.objectStore("states");
        const state = await states.get(id);
        if (state) await states.put({ ...state, fileName, isInFile: true });
      }),
    drop: (ids) => drop(database, ids),
  };
};
