import { Button } from "@fluentui/react-button";
import type { Host, SheetPicture } from "../../workbook/host";
import { errorMessage } from "../../workbook/errorMessage";
import { a1 } from "../../workbook/address";
import type { CellPatch, Undo } from "../../workbook/patch";
import { OutcomeLine } from "../parts/OutcomeLine";
import { useOutcome } from "../parts/useOutcome";

interface Props {
  readonly host: Host;
  /** What the button calls the picture. */
  readonly name: string;
  /** Made when it is asked for: a picture for paper differs from that on the screen. */
  readonly picture: () => SheetPicture;
  /** A line beneath it that says what it was drawn for. */
  readonly caption?: () => Promise<CellPatch>;
}

interface Captioned {
  readonly sentence: string;
  readonly undo: Undo;
}

const WITHOUT: Captioned = { sentence: "", undo: () => Promise.resolve() };

/** A picture stays where the line beneath it can't be written. */
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

/** Puts a picture on the sheet that it was made from, and says where it lies. */
export const PutOnSheet = ({ host, name, picture, caption }: Props) => {
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
        takeBack: { run, said: `Undone: the ${name} was removed.` },
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
