import { render } from "preact";
import { Pane } from "./Pane";
import "./pane.css";
import type { PaneHost } from "./paneHost";

/** Shows the pane in an element of the page. */
export const mountPane = (element: HTMLElement, host: PaneHost): void => {
  render(<Pane host={host} />, element);
};
