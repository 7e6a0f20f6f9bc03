import { mountPane } from "../../../pane/mount";
import { DEMO_TAKEOFF } from "../../../sheets/newJob/demoTakeoffs";
import { takeoffPlan, USUAL_NAMES } from "../../../sheets/newJob/takeoffPlan";
import "./local.css";
import type { Book } from "../../../xlsx/book/book";
import { canBeDrawn } from "../pictures/decodedImage";
import { download } from "../files/download";
import { fileWork } from "../files/fileWork";
import { replaceableWorkbook } from "./replaceableWorkbook";
import { localHost } from "./localHost";
import { sendToWorker } from "../files/sendToWorker";
import { switchWithF6 } from "./switchWithF6";
import { chooseTarget, type FilePicker } from "../files/fileTarget";
import { workbookFiles } from "../files/workbookFiles";
import { createKeeper, type Keeper } from "../kept/keeper";
import { sourceOf } from "../kept/keptWorkbooks";
import type { KeptState } from "../kept/keptState";
import { openStateStore } from "../kept/stateStore";
import { stateToOpen } from "../kept/stateToOpen";
import { holdWorkbook, newWorkbookId } from "../kept/tabWorkbook";
import type { PageWorkbook } from "../workbook/pageWorkbook";
import { offerKept } from "./KeptOffer";
import { warnBeforeLeaving } from "./warnBeforeLeaving";

const elementOf = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no element ${id}`);
  return element;
};

const dark = window.matchMedia("(prefers-color-scheme: dark)");

const store = openStateStore();
// The pane says why, when it asks the keeper.
store.catch(() => undefined);

/** The engine is large, so it loads in its own chunk while the pane is painted. */
const loadEngine = async () => {
  const [{ showWorkbook }, { localCatalog }, { workbookData }, { bookSnapshot }] = await Promise.all([
    import("./showWorkbook"),
    import("../formulas/catalog"),
    import("../engine/planSnapshot"),
    import("../book/bookSnapshot"),
  ]);
  const show = (snapshot: ReturnType<typeof workbookData>): PageWorkbook =>
    showWorkbook(elementOf("workbook"), localCatalog, snapshot, dark.matches);
  return {
    showExample: () => show(workbookData("local", takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES))),
    showBook: (book: Book) => show(bookSnapshot(`local-${Date.now()}`, book)),
  };
};
const engine = loadEngine();

/** The kept state that the page starts with, if any, read from its file. */
const keptStart = async () => {
  try {
    const kept = await store;
    const state = await stateToOpen(await kept.list(), (states: readonly KeptState[]) =>
      offerKept(elementOf("workbook"), elementOf("pane"), states, Date.now()),
    );
    const bytes = state && (await kept.file(state.id));
    if (!state || !bytes) return undefined;
    const source = await files.read(sourceOf(state, bytes), new AbortController().signal);
    return { state, source };
  } catch {
    // Where the browser keeps nothing, or a state can't be read, the page starts with the example. The states stay listed.
    return undefined;
  }
};

/** Opens what was kept, or the worked example. */
const openFirst = async () => {
  const [start, { showExample, showBook }] = await Promise.all([keptStart(), engine]);
  const replaceable = replaceableWorkbook(start ? showBook(start.source.shown) : showExample());
  const { workbook } = replaceable;
  dark.addEventListener("change", ({ matches }) => {
    workbook.setDarkMode(matches);
  });
  return { ...replaceable, start };
};

const first = openFirst();
const ready = first.then(({ workbook }) => workbook);

const startKeeping = async (): Promise<Keeper> => {
  const { workbook, start } = await first;
  const id = start?.state.workbook ?? newWorkbookId();
  await holdWorkbook(id);
  if (start) {
    await workbook.calculated;
    await start.source.adopt(workbook);
  }
  const onEdited = (listener: () => void): (() => void) => workbook.onEdited(listener);
  return createKeeper({ id, state: start?.state }, { files, store, onEdited, now: Date.now });
};

/** Replaces the workbook on the page. */
const showBook = async (book: Book): Promise<PageWorkbook> => {
  const [{ workbook, replace }, loaded] = await Promise.all([first, engine]);
  const { activeElement } = document;
  workbook.close();
  replace(loaded.showBook(book));
  // The grid takes the keyboard focus once it is drawn. If the focus was in the pane, it goes back there.
  if (activeElement instanceof HTMLElement && elementOf("pane").contains(activeElement))
    void workbook.painted.then(() => {
      activeElement.focus();
    });
  return workbook;
};

switchWithF6(elementOf("workbook"), elementOf("pane"));
const files = workbookFiles(ready, {
  show: showBook,
  beforeAnother: async () => (await keeper).beforeAnother(),
  work: fileWork(sendToWorker),
  canBeDrawn,
  download,
  chooseTarget: chooseTarget(window as FilePicker),
});
const keeper = startKeeping();
files.onOpened(() => void keeper.then(({ opened }) => opened()));
void keeper.then(({ watch }) => watch(warnBeforeLeaving()));
mountPane(elementOf("pane"), localHost(ready, files, keeper));
