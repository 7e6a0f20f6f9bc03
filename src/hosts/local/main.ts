import { mountPane } from "../../pane/mount";
import { DEMO_TAKE_OFF } from "../../sheets/takeOff/demo";
import { takeOffPlan, USUAL_NAMES } from "../../sheets/takeOff/takeOff";
import "./local.css";
import { localHost } from "./localHost";
import { switchWithF6 } from "./switchWithF6";
import type { PageWorkbook } from "./workbook";

const elementOf = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no element ${id}`);
  return element;
};

/** Opens on the worked example. The engine is large, so it comes in a part of its own, after the pane is painted. */
const openWorkbook = async (): Promise<PageWorkbook> => {
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const [{ showWorkbook }, { localCatalogue }, { workbookData }] = await Promise.all([
    import("./page"),
    import("./catalogue"),
    import("./snapshot"),
  ]);
  const plan = takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES);
  const workbook = showWorkbook(
    elementOf("workbook"),
    localCatalogue,
    workbookData("local", plan),
    dark.matches,
  );
  dark.addEventListener("change", ({ matches }) => {
    workbook.setDarkMode(matches);
  });
  return workbook;
};

switchWithF6(elementOf("workbook"), elementOf("pane"));
mountPane(elementOf("pane"), localHost(openWorkbook()));
