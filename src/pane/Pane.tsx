import { Cautions } from "./Cautions";
import { CellCard } from "./CellCard";
import type { PaneHost } from "./paneHost";
import { TakeOffCard } from "./TakeOffCard";

/** The whole task pane, whichever workbook it stands beside. */
export const Pane = ({ host }: { host: PaneHost }) => (
  <main class="pane" aria-label="Gablewright">
    <header class="pane-head">
      <h1>Gablewright</h1>
      <p>Roof quantities for interlocking metal shingles, beside {host.title}.</p>
    </header>
    <TakeOffCard host={host} />
    {host.watchCell && <CellCard watchCell={host.watchCell} />}
    <Cautions />
  </main>
);
