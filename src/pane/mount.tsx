import { render } from "preact";
import { ControlThemeProvider } from "./controls/ControlThemeProvider";
import { Pane } from "./Pane";
import "./pane.css";
import type { PaneHost } from "./parts/paneHost";

/** Shows the pane in an element of the page. */
export const mountPane = (element: HTMLElement, host: PaneHost): void => {
  render(
    <ControlThemeProvider>
      <Pane host={host} />
    </ControlThemeProvider>,
    element,
  );
};
