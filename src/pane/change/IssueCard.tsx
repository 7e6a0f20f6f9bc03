import { Button } from "@fluentui/react-button";
import type { Host } from "../../workbook/host";
import { issueActiveChangeOrder } from "../../sheets/changeOrder/issueChangeOrder";
import { OutcomeLine } from "../parts/OutcomeLine";
import { warningOf, useOutcome } from "../parts/useOutcome";

/** Seals a change order once its rates and prices are filled in, so that an edit shows. */
export const IssueCard = ({ host }: { host: Host }) => {
  const { isBusy, outcome, attempt, undo } = useOutcome();

  const run = (): Promise<void> =>
    attempt(async () => {
      const issued = await issueActiveChangeOrder(host);
      return {
        message: `Issued "${issued.sheet}" under the seal ${issued.seal}.`,
        ...warningOf(issued.remarks),
        undoAction: { run: issued.undo, said: "Undone: the seal is gone, and nothing else has changed." },
      };
    });

  return (
    <section class="card" aria-labelledby="issue-title">
      <h2 id="issue-title">Issue</h2>
      <p>
        Seals the figures of the change order in front, once it is filled in. An edit shows on it from then
        on, and nothing goes on from it. Reasons, initials and signatures stay free.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void run();
        }}
      >
        <Button appearance="primary" type="submit" disabledFocusable={isBusy}>
          {isBusy ? "Working…" : "Issue the change order"}
        </Button>
      </form>
      <OutcomeLine outcome={outcome} onUndo={undo} />
    </section>
  );
};
