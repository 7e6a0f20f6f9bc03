import { render, type ComponentChild } from "preact";

// Browsers have it; the stand-in of one that the tests run in, which has no heights, doesn't.
Element.prototype.scrollIntoView = () => undefined;

/** Shows a card alone on a page. */
export const show = (card: ComponentChild): HTMLElement => {
  document.body.innerHTML = "<div></div>";
  const element = document.body.firstElementChild as HTMLElement;
  render(card, element);
  return element;
};

/** Waits until a text is there, as a person would. */
export const seen = async (element: HTMLElement, text: string): Promise<void> => {
  for (let wait = 0; wait < 2000; wait++) {
    if (element.textContent?.includes(text)) return;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  throw new Error(`"${text}" never comes; there is: ${element.textContent}`);
};

/** Presses a button by what it says. */
export const press = (element: HTMLElement, label: string): void => {
  const button = [...element.querySelectorAll("button")].find(({ textContent }) => textContent === label);
  if (!button) throw new Error(`no button says "${label}"`);
  button.click();
};

/** How far the bar says that a long work is, from 0 to 1; undefined where there is none. */
export const shareShown = (element: HTMLElement): number | undefined => {
  const bar = element.querySelector('[role="progressbar"]');
  return bar ? Number(bar.getAttribute("aria-valuenow")) : undefined;
};
