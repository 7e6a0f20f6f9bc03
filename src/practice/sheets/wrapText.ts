/** Text in lines of at most this many letters, for one row each: no cell is merged and no row grows. */
export const wrapText = (text: string, letters: number): string[] =>
  text.split(" ").reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > letters) return [...lines, word];
    return [...lines.slice(0, -1), `${last} ${word}`];
  }, []);
