import type { KeepStatus } from "../../../pane/parts/paneHost";

const PAGE = "Gablewright";

const pageTitle = ({ isInFile, fileName }: KeepStatus): string =>
  `${isInFile ? "" : "* "}${fileName === undefined ? `${PAGE}: local workbook` : `${fileName} - ${PAGE}`}`;

/** Shows in the tab's title whether a file holds the workbook, and asks before the page is left if none does. */
export const warnBeforeLeaving = (): ((status: KeepStatus) => void) => {
  let isInFile = true;
  window.addEventListener("beforeunload", (event) => {
    if (!isInFile) event.preventDefault();
  });
  return (status) => {
    ({ isInFile } = status);
    document.title = pageTitle(status);
  };
};
