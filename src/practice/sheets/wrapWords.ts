/** Sentences in lines of at most so many letters: a row each, so that no cell must be merged or grow. */
export const wrapWords = (text: string, letters: number): string[] =>
  text.split(" ").reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > letters) return [...lines, word];
    return [...lines.slice(0, -1), `${last} ${word}`];
  }, []);
