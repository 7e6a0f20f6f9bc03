import { useState } from "preact/hooks";
import { VERSION } from "../../shared/version";
import { Cautions } from "./Cautions";
import { CellCard } from "./CellCard";
import { FileCard } from "./FileCard";
import { Fold } from "./Fold";
import { FieldSheetCard } from "./FieldSheetCard";
import { loadedLater } from "./loadedLater";
import { OpenedWorkbooks } from "./parts/ofWorkbook";
import type { PaneHost } from "./parts/paneHost";
import { Places } from "./Places";
import { RepairCard } from "./RepairCard";
import { TakeoffCard } from "./TakeoffCard";

// A pane that opens soon holds little: what is of use on some days only, or needs the whole catalog, comes when it is asked for.
const ChangeCards = loadedLater(() => import("./change/ChangeCards").then((part) => part.ChangeCards));
const PracticeCards = loadedLater(() =>
  import("./practice/PracticeCards").then((part) => part.PracticeCards),
);
const FunctionsCard = loadedLater(() =>
  import("./functions/FunctionsCard").then((part) => part.FunctionsCard),
);
const ExtendCard = loadedLater(() => import("./extend/ExtendCard").then((part) => part.ExtendCard));
const PictureCard = loadedLater(() => import("./picture/PictureCard").then((part) => part.PictureCard));

/** The second click of a double click isn't meant: what is done once would be done again, or refused, and its Undo gone. */
const dropSecondClick = (event: MouseEvent): void => {
  if (event.detail < 2 || !(event.target instanceof Element) || !event.target.closest("button")) return;
  event.preventDefault();
  event.stopPropagation();
};

/** The whole task pane, whichever workbook it stands beside. */
export const Pane = ({ host }: { host: PaneHost }) => {
  const { handOut } = host;
  const [opened, setOpened] = useState(0);
  return (
    <main class="pane" aria-label="Gablewright" tabIndex={-1} onClickCapture={dropSecondClick}>
      <header class="pane-head">
        <h1>Gablewright</h1>
        <p>Roof quantities for interlocking metal shingles, beside {host.title}.</p>
        {host.keyboardHint && <p>{host.keyboardHint}</p>}
      </header>
      {host.watchCell && <CellCard watchCell={host.watchCell} />}
      <OpenedWorkbooks.Provider value={opened}>
        <Places
          tabs={[
            {
              id: "sheets",
              label: "Sheets",
              content: (isShown) => (
                <>
                  {host.files && (
                    // What it says is of the workbook that it has just opened.
                    <OpenedWorkbooks.Provider value={0}>
                      <FileCard files={host.files} onOpened={() => setOpened((before) => before + 1)} />
                    </OpenedWorkbooks.Provider>
                  )}
                  <TakeoffCard host={host} />
                  <FieldSheetCard host={host} />
                  <Fold title="Change orders" summary="signed base, change order, ledger lines">
                    {(isOpen) => <ChangeCards host={host} isShown={isShown && isOpen} />}
                  </Fold>
                  {handOut && (
                    <Fold title="A class" summary="practice sheets, their key, marking">
                      {() => <PracticeCards host={host} handOut={handOut} />}
                    </Fold>
                  )}
                </>
              ),
            },
            {
              id: "functions",
              label: "Functions",
              content: (isShown) => <FunctionsCard host={host} isShown={isShown} />,
            },
            {
              id: "extend",
              label: "Extend",
              content: () => (
                <>
                  <ExtendCard host={host} />
                  {host.repair && <RepairCard repair={host.repair} />}
                </>
              ),
            },
            {
              id: "picture",
              label: "Picture",
              content: (isShown) => <PictureCard host={host} isShown={isShown} />,
            },
          ]}
        />
      </OpenedWorkbooks.Provider>
      <Cautions />
      <p class="hint">Gablewright {VERSION}</p>
    </main>
  );
};
