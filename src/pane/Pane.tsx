import { Cautions } from "./Cautions";
import { CellCard } from "./CellCard";
import { FileCard } from "./FileCard";
import { FieldSheetCard } from "./FieldSheetCard";
import type { PaneHost } from "./paneHost";
import { PictureCard } from "./picture/PictureCard";
import { TakeOffCard } from "./TakeOffCard";

/** The whole task pane, whichever workbook it stands beside. */
export const Pane = ({ host }: { host: PaneHost }) => (
  <main class="pane" aria-label="Gablewright" tabIndex={-1}>
    <header class="pane-head">
      <h1>Gablewright</h1>
      <p>Roof quantities for interlocking metal shingles, beside {host.title}.</p>
      {host.keyboardHint && <p>{host.keyboardHint}</p>}
    </header>
    {host.watchCell && <CellCard watchCell={host.watchCell} />}
    <PictureCard host={host} />
    <TakeOffCard host={host} />
    <FieldSheetCard host={host} />
    {host.files && <FileCard files={host.files} />}
    <Cautions />
  </main>
);
