import { Button } from "@fluentui/react-button";
import type { Host, SheetPicture } from "../../hosts/host";
import { a1 } from "../../sheets/address";
import { OutcomeLine } from "../OutcomeLine";
import { useOutcome } from "../useOutcome";

interface Props {
  readonly host: Host;
  /** What the button calls the picture. */
  readonly name: string;
  /** Made when it is asked for: a picture for paper differs from that on the screen. */
  readonly picture: () => SheetPicture;
}

/** Puts a picture on the sheet that it was made from, and says where it lies. */
export const PutOnSheet = ({ host, name, picture }: Props) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();
  const put = (): Promise<void> =>
    attempt(async () => {
      const made = picture();
      const run = await host.putPicture(made);
      return {
        message: `The ${name} lies on "${made.sheet}", over the cells from ${a1(made.at)} on; drag it where you like.`,
        takeBack: { run, said: `Undone: the ${name} is gone.` },
      };
    });
  return (
    <>
      <Button appearance="primary" disabledFocusable={isBusy} onClick={() => void put()}>
        {`Put the ${name} on the sheet`}
      </Button>
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </>
  );
};
