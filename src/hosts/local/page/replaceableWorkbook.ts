import type { PageWorkbook, Stop } from "../workbook/pageWorkbook";

export interface Following {
  /** The workbook on the page, whichever that is: what listens to it goes on with the next one. */
  readonly workbook: PageWorkbook;
  replace(next: PageWorkbook): void;
}

/** A workbook that another can take the place of. */
export const followingWorkbook = (first: PageWorkbook): Following => {
  let current = first;
  const listening = new Set<{ start: () => Stop; stop: Stop }>();
  const follow = (start: () => Stop): Stop => {
    const each = { start, stop: start() };
    listening.add(each);
    return () => {
      each.stop();
      listening.delete(each);
    };
  };
  return {
    workbook: {
      getCell: (address) => current.getCell(address),
      existing: () => current.existing(),
      inView: () => current.inView(),
      inViewDated: () => current.inViewDated(),
      contents: () => current.contents(),
      named: (name) => current.named(name),
      putPicture: (picture) => current.putPicture(picture),
      write: (plan) => current.write(plan),
      survey: () => current.survey(),
      put: (patch, run) => current.put(patch, run),
      setDarkMode: (dark) => current.setDarkMode(dark),
      finishEditing: () => current.finishEditing(),
      settled: () => current.settled(),
      book: () => current.book(),
      movesBySheet: () => current.movesBySheet(),
      pictures: () => current.pictures(),
      steps: () => current.steps(),
      close: () => current.close(),
      onSelection: (listener) => follow(() => current.onSelection(listener)),
      onChange: (listener) => follow(() => current.onChange(listener)),
      onCalculated: (listener) => follow(() => current.onCalculated(listener)),
      get calculated() {
        return current.calculated;
      },
      get painted() {
        return current.painted;
      },
    },
    replace: (next) => {
      current = next;
      for (const each of listening) each.stop = each.start();
    },
  };
};
