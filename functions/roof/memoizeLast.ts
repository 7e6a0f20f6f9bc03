/**
 * The last few answers of a costly pure function: a sheet asks for the same roof from every cell that reads it. The answer
 * depends on the arguments alone, so remembering it changes nothing but the time.
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
