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
import { workbookFiles } from "../files/workbookFiles";
import type { PageWorkbook } from "../workbook/pageWorkbook";

const elementOf = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no element ${id}`);
  return element;
};

const dark = window.matchMedia("(prefers-color-scheme: dark)");

/** Opens the worked example. The engine is large, so it loads in its own chunk after the pane is painted. */
const openFirst = async () => {
  const [{ showWorkbook }, { localCatalog }, { workbookData }] = await Promise.all([
    import("./showWorkbook"),
    import("../formulas/catalog"),
    import("../engine/planSnapshot"),
  ]);
  const plan = takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES);
  const snapshot = workbookData("local", plan);
  const replaceable = replaceableWorkbook(
    showWorkbook(elementOf("workbook"), localCatalog, snapshot, dark.matches),
  );
  dark.addEventListener("change", ({ matches }) => {
    replaceable.workbook.setDarkMode(matches);
  });
  return replaceable;
};

const first = openFirst();
const ready = first.then(({ workbook }) => workbook);

/** Replaces the workbook on the page. */
const showBook = async (book: Book): Promise<PageWorkbook> => {
  const [{ workbook, replace }, { showWorkbook }, { localCatalog }, { bookSnapshot }] = await Promise.all([
    first,
    import("./showWorkbook"),
    import("../formulas/catalog"),
    import("../book/bookSnapshot"),
  ]);
  const { activeElement } = document;
  workbook.close();
  replace(
    showWorkbook(
      elementOf("workbook"),
      localCatalog,
      bookSnapshot(`local-${Date.now()}`, book),
      dark.matches,
    ),
  );
  // The grid takes the keyboard focus once it is drawn. If the focus was in the pane, it goes back there.
  if (activeElement instanceof HTMLElement && elementOf("pane").contains(activeElement))
    void workbook.painted.then(() => {
      activeElement.focus();
    });
  return workbook;
};

switchWithF6(elementOf("workbook"), elementOf("pane"));
const files = workbookFiles(ready, { show: showBook, work: fileWork(sendToWorker), canBeDrawn, download });
mountPane(elementOf("pane"), localHost(ready, files));
