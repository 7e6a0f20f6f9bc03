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
    {areWordsShown ? (
      <label>
        {words}
        <progress value={share} />
      </label>
    ) : (
      <progress value={share} aria-label={words} />
    )}
    <button type="button" class="quiet" disabled={!onCancel} onClick={onCancel}>
      Cancel
    </button>
  </div>
);
