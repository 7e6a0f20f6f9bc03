/** Does one thing after the other, in the order in which they were asked for. */
export const newQueue = (): (<T>(act: () => Promise<T>) => Promise<T>) => {
  let last: Promise<unknown> = Promise.resolve();
  return (act) => {
    const mine = last.then(act);
    last = mine.then(
      () => undefined,
      () => undefined,
    );
    return mine;
  };
};
