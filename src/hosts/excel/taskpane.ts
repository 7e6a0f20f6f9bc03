import { mountPane } from "../../pane/mount";
import { excelHost } from "./excelHost";
import { openClass } from "./openClass";
import { insertSvg } from "./insertSvg";
import { missingRequirements } from "./requirements";
import { schemeOf, type HostTheme } from "./theme";

/** The page that Excel opens as the task pane and keeps as the functions' shared runtime. */
void Office.onReady(({ host }) => {
  const element = document.getElementById("pane");
  if (!element) throw new Error("the page has no element for the pane");
  if (host !== Office.HostType.Excel) {
    element.textContent = "This page is Gablewright's task pane: it opens inside Excel.";
    return;
  }
  // Excel on the web has no theme. It is read once, because Excel has no event for a changed theme (only Outlook has one);
  // the pane follows when it is opened again.
  const theme = Office.context.officeTheme as HostTheme | undefined;
  document.documentElement.style.colorScheme = schemeOf(theme ?? {}) ?? "";
  const missing = missingRequirements((set, version) =>
    Office.context.requirements.isSetSupported(set, version),
  );
  if (missing.length > 0)
    element.textContent = `This Excel lacks ${missing.join(", ")}, which Gablewright needs. Update Excel.`;
  else mountPane(element, { ...excelHost(Excel, insertSvg), handOut: openClass(Excel) });
});
