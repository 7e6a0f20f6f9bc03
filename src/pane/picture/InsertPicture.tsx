import { Button } from "@fluentui/react-button";
import type { Host, SheetPicture } from "../../workbook/host";
import { errorMessage } from "../../workbook/errorMessage";
import { a1 } from "../../workbook/address";
import type { CellPatch, Undo } from "../../workbook/patch";
import { OutcomeLine } from "../parts/OutcomeLine";
import { useOutcome } from "../parts/useOutcome";

interface Props {
  readonly host: Host;
  /** The picture's name on the button and in messages. */
  readonly name: string;
  /** Drawn on demand, because the picture for paper differs from the one on the screen. */
  readonly picture: () => SheetPicture;
  /** The caption below it. */
  readonly caption?: () => Promise<CellPatch>;
}

interface Captioned {
  readonly sentence: string;
  readonly undo: Undo;
}

const WITHOUT: Captioned = { sentence: "", undo: () => Promise.resolve() };

/** If the caption can't be written, the picture is still inserted. */
const writeCaption = async (host: Host, caption: () => Promise<CellPatch>): Promise<Captioned> => {
  try {
    return { ...WITHOUT, undo: await host.putCells(await caption()) };
  } catch (failure) {
    return {
      ...WITHOUT,
      sentence: ` The caption below it was not written. ${errorMessage(failure)}`,
    };
  }
};

/** A button that inserts a picture on its sheet, with Undo. */
export const InsertPicture = ({ host, name, picture, caption }: Props) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();
  const put = (): Promise<void> =>
    attempt(async () => {
      const made = picture();
      const removePicture = await host.putPicture(made);
      const { sentence, undo: removeCaption } = caption ? await writeCaption(host, caption) : WITHOUT;
      const run = async (): Promise<void> => {
        await removeCaption();
        await removePicture();
      };
      return {
        message: `The ${name} is on "${made.sheet}", starting at ${a1(made.at)}. Drag it where you want it.${sentence}`,
        undoAction: { run, said: `Undone: the ${name} was removed.` },
      };
    });
  return (
    <>
      <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void put()}>
        {`Insert ${name}`}
      </Button>
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </>
  );
};
