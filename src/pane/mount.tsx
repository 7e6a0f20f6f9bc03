import { render } from "preact";
import { Look } from "./controls/ControlTheme";
import { Pane } from "./Pane";
import "./pane.css";
import type { PaneHost } from "./parts/paneHost";

/** Shows the pane in an element of the page. */
export const mountPane = (element: HTMLElement, host: PaneHost): void => {
  render(
    <Look>
      <Pane host={host} />
    </Look>,
    element,
  );
};
