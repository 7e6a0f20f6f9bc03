import { Button } from "@fluentui/react-button";
import { ProgressBar } from "@fluentui/react-progress";

interface Props {
  /** What is being done; it stands above the bar where there is room to read it, else only a screen reader says it. */
  readonly words: string;
  readonly areWordsShown?: boolean;
  /** From 0 to 1; undefined where nobody knows. */
  readonly share?: number;
  /** Undefined where it can't be stopped just now. */
  readonly onCancel: (() => void) | undefined;
}

/** How far a long work is, and the way to stop it. */
export const Progress = ({ words, areWordsShown = false, share, onCancel }: Props) => (
  <div class="search">
    {areWordsShown && <p>{words}</p>}
    <ProgressBar value={share} aria-label={words} thickness="large" />
    <Button disabledFocusable={!onCancel} onClick={onCancel}>
      Cancel
    </Button>
  </div>
);
