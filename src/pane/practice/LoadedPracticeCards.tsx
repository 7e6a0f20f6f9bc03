import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { failureInWords } from "../../failureInWords";
import type { Host } from "../../hosts/host";
import type { HandOut } from "../paneHost";

interface Props {
  readonly host: Host;
  readonly handOut: HandOut;
}

/** The cards of a class, which are large and of use on few days: they are loaded when they are first shown. */
export const LoadedPracticeCards = (props: Props) => {
  const [Cards, setCards] = useState<FunctionComponent<Props>>();
  const [sentence, setSentence] = useState("Loading…");
  useEffect(() => {
    import("./PracticeCards").then(
      ({ PracticeCards }) => {
        setCards(() => PracticeCards);
      },
      (failure: unknown) => {
        setSentence(failureInWords(failure));
      },
    );
  }, []);
  return Cards ? <Cards {...props} /> : <p role="status">{sentence}</p>;
};
