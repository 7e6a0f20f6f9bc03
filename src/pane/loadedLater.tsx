import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { failureInWords } from "../failureInWords";

/** A part of the pane that isn't needed to begin with: it is loaded when it is first shown. */
export const loadedLater = <Props,>(
  load: () => Promise<FunctionComponent<Props>>,
): FunctionComponent<Props> => {
  const Later: FunctionComponent<Props> = (props) => {
    const [Part, setPart] = useState<FunctionComponent<Props>>();
    const [sentence, setSentence] = useState("Loading…");
    useEffect(() => {
      load().then(
        (part) => {
          setPart(() => part);
        },
        (failure: unknown) => {
          setSentence(failureInWords(failure));
        },
      );
    }, []);
    return Part ? <Part {...props} /> : <p role="status">{sentence}</p>;
  };
  return Later;
};
