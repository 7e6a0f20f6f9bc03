/** A piece of a source to replace with text; where `start` equals `end`, the text is inserted. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Makes all replacements. Several insertions at the same position keep their order. */
export const applySplices = (source: string, splices: readonly Splice[]): string => {
  const sorted = [...splices].sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text } of sorted) {
    if (start < at) throw new Error("Two changes of a part overlap.");
    pieces.push(source.slice(at, start), text);
    at = end;
  }
  pieces.push(source.slice(at));
  return pieces.join("");
};
