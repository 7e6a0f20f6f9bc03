import { Button } from "@fluentui/react-button";
import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { errorMessage } from "../workbook/errorMessage";

/** A part of the pane that isn't needed to begin with: it is loaded when it is first shown. */
export const loadedLater = <Props,>(
  load: () => Promise<FunctionComponent<Props>>,
): FunctionComponent<Props> => {
  const Later: FunctionComponent<Props> = (props) => {
    const [Part, setPart] = useState<FunctionComponent<Props>>();
    const [failure, setFailure] = useState<string>();
    const begin = (): void => {
      setFailure(undefined);
      load().then(
        (part) => {
          setPart(() => part);
        },
        (thrown: unknown) => {
          setFailure(errorMessage(thrown));
        },
      );
    };
    useEffect(begin, []);
    if (Part) return <Part {...props} />;
    return (
      <>
        <p role="status" class={failure === undefined ? "outcome" : "outcome failed"}>
          {failure === undefined ? "Loading…" : `This part of the pane couldn't be loaded. ${failure}`}
        </p>
        {failure !== undefined && (
          <Button
            onClick={({ currentTarget }) => {
              // The button goes, and its place stays: the keyboard goes on from there.
              currentTarget.closest<HTMLElement>(".place")?.focus();
              begin();
            }}
          >
            Load it again
          </Button>
        )}
      </>
    );
  };
  return Later;
};
