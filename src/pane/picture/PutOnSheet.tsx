import { Button } from "@fluentui/react-button";
import { useState } from "preact/hooks";
import { failureInWords } from "../../failureInWords";
import type { Host, SheetPicture } from "../../hosts/host";
import { a1 } from "../../sheets/address";

interface Props {
  readonly host: Host;
  /** What the button calls the picture. */
  readonly name: string;
  /** Made when it is asked for: a picture for paper differs from that on the screen. */
  readonly picture: () => SheetPicture;
}

/** Puts a picture on the sheet that it was made from, and says where it lies. */
export const PutOnSheet = ({ host, name, picture }: Props) => {
  const [outcome, setOutcome] = useState<{ kind: "written" | "failed"; message: string }>();
  const put = async (): Promise<void> => {
    const made = picture();
    try {
      await host.putPicture(made);
      setOutcome({
        kind: "written",
        message: `The ${name} lies on "${made.sheet}", over the cells from ${a1(made.at)} on; drag it where you like.`,
      });
    } catch (failure) {
      setOutcome({ kind: "failed", message: failureInWords(failure) });
    }
  };
  return (
    <>
      <Button appearance="primary" onClick={() => void put()}>
        {`Put the ${name} on the sheet`}
      </Button>
      <p role="status" class={`outcome ${outcome?.kind ?? ""}`}>
        {outcome?.message}
      </p>
    </>
  );
};
