/** Runs actions one after the other, in the order in which they were added. */
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
