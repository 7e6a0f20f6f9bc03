/**
 * F6 moves the focus between the workbook and the pane, as it does between the parts of other windows. The grid uses Tab
 * itself, so without F6 the keyboard couldn't leave it.
 */
export const switchWithF6 = (workbook: HTMLElement, pane: HTMLElement): void => {
  let lastInWorkbook: HTMLElement | undefined;
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      const { activeElement } = document;
      if (activeElement && pane.contains(activeElement)) {
        (lastInWorkbook ?? workbook).focus();
        return;
      }
      if (activeElement instanceof HTMLElement) lastInWorkbook = activeElement;
      pane.querySelector<HTMLElement>("main")?.focus();
    },
    { capture: true },
  );
};
