import { useState } from "preact/hooks";
import { VERSION } from "../../shared/version";
import { Cautions } from "./Cautions";
import { SelectedCellCard } from "./SelectedCellCard";
import { FileCard } from "./FileCard";
import { CollapsibleSection } from "./CollapsibleSection";
import { FieldSheetCard } from "./FieldSheetCard";
import { lazyCard } from "./lazyCard";
import { WorkbookCount } from "./parts/useWorkbookState";
import type { PaneHost } from "./parts/paneHost";
import { PaneTabs } from "./PaneTabs";
import { SaveMark } from "./SaveMark";
import { RepairCard } from "./RepairCard";
import { TakeoffCard } from "./TakeoffCard";

// The pane opens faster when it loads little: parts that are needed rarely, or that need the whole catalog, load when first shown.
const ChangeCards = lazyCard(() => import("./change/ChangeCards").then((part) => part.ChangeCards));
const KeptCard = lazyCard(() => import("./KeptCard").then((part) => part.KeptCard));
const PracticeCards = lazyCard(() => import("./practice/PracticeCards").then((part) => part.PracticeCards));
const FunctionsCard = lazyCard(() => import("./functions/FunctionsCard").then((part) => part.FunctionsCard));
const ExtendCard = lazyCard(() => import("./extend/ExtendCard").then((part) => part.ExtendCard));
const PictureCard = lazyCard(() => import("./picture/PictureCard").then((part) => part.PictureCard));

/** Ignores the second click of a double click: it would repeat the action, or fail and hide the Undo of the first. */
const dropSecondClick = (event: MouseEvent): void => {
  if (event.detail < 2 || !(event.target instanceof Element) || !event.target.closest("button")) return;
  event.preventDefault();
  event.stopPropagation();
};

/** The task pane, the same in every host. */
export const Pane = ({ host }: { host: PaneHost }) => {
  const { handOut, kept } = host;
  const [opened, setOpened] = useState(0);
  const onOpened = (): void => setOpened((before) => before + 1);
  return (
    <main class="pane" aria-label="Gablewright" tabIndex={-1} onClickCapture={dropSecondClick}>
      <header class="pane-head">
        <h1>Gablewright</h1>
        <p>Roof quantities for interlocking metal shingles, in {host.title}.</p>
        {host.keyboardHint && <p>{host.keyboardHint}</p>}
      </header>
      {host.kept && <SaveMark watch={host.kept.watch} />}
      {host.watchCell && <SelectedCellCard watchCell={host.watchCell} />}
      <WorkbookCount.Provider value={opened}>
        <PaneTabs
          tabs={[
            {
              id: "sheets",
              label: "Sheets",
              content: (isShown) => (
                <>
                  {host.files && (
                    // Its message is about the workbook that it has just opened, so opening doesn't clear it.
                    <WorkbookCount.Provider value={0}>
                      <FileCard files={host.files} onOpened={onOpened} />
                    </WorkbookCount.Provider>
                  )}
                  {kept && (
                    <CollapsibleSection
                      title="Kept on this computer"
                      summary="earlier versions, other workbooks"
                    >
                      {(isOpen) => (
                        <WorkbookCount.Provider value={0}>
                          <KeptCard kept={kept} isShown={isShown && isOpen} onOpened={onOpened} />
                        </WorkbookCount.Provider>
                      )}
                    </CollapsibleSection>
                  )}
                  <TakeoffCard host={host} />
                  <FieldSheetCard host={host} />
                  <CollapsibleSection
                    title="Change orders"
                    summary="signed order, change order, journal entry"
                  >
                    {(isOpen) => <ChangeCards host={host} isShown={isShown && isOpen} />}
                  </CollapsibleSection>
                  {handOut && (
                    <CollapsibleSection title="Training class" summary="practice sheets, answer key, grading">
                      {() => <PracticeCards host={host} handOut={handOut} />}
                    </CollapsibleSection>
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
      </WorkbookCount.Provider>
      <Cautions />
      <p class="hint">Gablewright {VERSION}</p>
    </main>
  );
};
