/** Which workbook this tab shows. A reload keeps it; a second tab has another. */
const SESSION_KEY = "gablewright-workbook";
const LOCK_PREFIX = "gablewright-workbook-";

/** Absent where a page isn't secure, so that only one tab is sure to be right there. */
const locks = navigator.locks as LockManager | undefined;

export const newWorkbookId = (): string => crypto.randomUUID();

/** The workbook that this tab showed before it was loaded again. */
export const lastWorkbookOfTab = (): string | null => sessionStorage.getItem(SESSION_KEY);

/** The workbook that this tab holds, and how to let it go. */
let held: { readonly id: string; readonly release: () => void } | undefined;

/**
 * Makes a workbook this tab's own, so that no other tab keeps states of it; false if another tab holds it. The browser frees it when
 * the tab is closed or crashes.
 */
export const holdWorkbook = async (id: string): Promise<boolean> => {
  if (held?.id === id || !locks) return true;
  const isHeld = await new Promise<boolean>((resolve, reject) => {
    locks
      .request(LOCK_PREFIX + id, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        if (lock === null) return undefined;
        return new Promise<void>((release) => {
          held?.release();
          held = { id, release };
        });
      })
      .catch(reject);
  });
  if (isHeld) sessionStorage.setItem(SESSION_KEY, id);
  return isHeld;
};

/** The workbooks that tabs show now, this one included. */
export const heldWorkbooks = async (): Promise<ReadonlySet<string>> => {
  const { held: taken = [] } = (await locks?.query()) ?? {};
  return new Set(
    taken.flatMap(({ name = "" }) => (name.startsWith(LOCK_PREFIX) ? [name.slice(LOCK_PREFIX.length)] : [])),
  );
};
