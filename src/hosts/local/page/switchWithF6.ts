/**
 * F6 goes from the workbook to the pane and back, as it goes between parts of a window elsewhere. The grid keeps Tab for
 * itself, so without this a keyboard would never leave it.
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
