/**
 * Memoizes the last `most` answers of an expensive pure function: a sheet asks for the same roof from every cell that
 * reads it.
 */
export const memoizeLast = <A extends readonly unknown[], R>(
  compute: (...args: A) => R,
  most: number,
): ((...args: A) => R) => {
  const answers = new Map<string, R>();
  return (...args) => {
    const key = JSON.stringify(args);
    const known = answers.get(key);
    if (known !== undefined) return known;
    const answer = compute(...args);
    answers.set(key, answer);
    const [oldest] = answers.keys();
    if (answers.size > most && oldest !== undefined) answers.delete(oldest);
    return answer;
  };
};
