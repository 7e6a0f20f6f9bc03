import { Button } from "@fluentui/react-button";
import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { errorMessage } from "../workbook/errorMessage";

/** A part of the pane whose script loads when the part is first shown. */
export const lazyCard = <Props,>(load: () => Promise<FunctionComponent<Props>>): FunctionComponent<Props> => {
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
              // The button disappears, so focus moves to its tab, which stays.
              currentTarget.closest<HTMLElement>(".place")?.focus();
              begin();
            }}
          >
            Try again
          </Button>
        )}
      </>
    );
  };
  return Later;
};
