import type { PaneHost } from "../parts/paneHost";
import { ChangeOrderCard } from "./ChangeOrderCard";
import { FreezeCard } from "./FreezeCard";
import { IssueCard } from "./IssueCard";
import { LedgerCard } from "./LedgerCard";
import { useSheetLists } from "./useSheetLists";

interface Props {
  readonly host: PaneHost;
  readonly isShown: boolean;
}

/** From a signed order through its changes to the journal. */
export const ChangeCards = ({ host, isShown }: Props) => {
  const lists = useSheetLists(host, isShown);
  return (
    <>
      <FreezeCard host={host} />
      <ChangeOrderCard host={host} lists={lists} />
      <IssueCard host={host} />
      <LedgerCard host={host} lists={lists} />
    </>
  );
};
