import { render, type ComponentChild } from "preact";

// Browsers have it, but the tests' stand-in for a browser has no heights and so doesn't.
Element.prototype.scrollIntoView = () => undefined;

/** Shows one card on an empty page. */
export const show = (card: ComponentChild): HTMLElement => {
  document.body.innerHTML = "<div></div>";
  const element = document.body.firstElementChild as HTMLElement;
  render(card, element);
  return element;
};

/** Waits until a text appears. */
export const seen = async (element: HTMLElement, text: string): Promise<void> => {
  for (let wait = 0; wait < 2000; wait++) {
    if (element.textContent?.includes(text)) return;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  throw new Error(`"${text}" never appears; the page shows: ${element.textContent}`);
};

/** Presses the button with this label. */
export const press = (element: HTMLElement, label: string): void => {
  const button = [...element.querySelectorAll("button")].find(({ textContent }) => textContent === label);
  if (!button) throw new Error(`no button says "${label}"`);
  button.click();
};

/** The progress bar's value, from 0 to 1; undefined if there is no bar. */
export const shareShown = (element: HTMLElement): number | undefined => {
  const bar = element.querySelector('[role="progressbar"]');
  return bar ? Number(bar.getAttribute("aria-valuenow")) : undefined;
};
