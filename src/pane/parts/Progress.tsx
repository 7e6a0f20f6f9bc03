import { Button } from "@fluentui/react-button";
import { ProgressBar } from "@fluentui/react-progress";

interface Props {
  /** What is being done. Screen readers always get it; it is shown above the bar only if `isLabelShown`. */
  readonly label: string;
  readonly isLabelShown?: boolean;
  /** From 0 to 1; undefined if unknown. */
  readonly share?: number;
  /** Undefined while it can't be canceled. */
  readonly onCancel: (() => void) | undefined;
}

/** A progress bar with a Cancel button. */
export const Progress = ({ label, isLabelShown = false, share, onCancel }: Props) => (
  <div class="search">
    {isLabelShown && <p>{label}</p>}
    <ProgressBar value={share} aria-label={label} thickness="large" />
    <Button disabledFocusable={!onCancel} onClick={onCancel}>
      Cancel
    </Button>
  </div>
);
