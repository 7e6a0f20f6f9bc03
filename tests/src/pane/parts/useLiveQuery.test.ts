/** @jest-environment jsdom */
import { h, render } from "preact";
import type { Host } from "../../../../src/workbook/host";
import { useLiveQuery } from "../../../../src/pane/parts/useLiveQuery";
import { seen, show } from "../../../support/card";

/** Longer than changes take to settle. */
const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 100));

/** A host whose changes the test tells of, and looks that end when the test says what they saw. */
const slowHost = () => {
  const looks: ((seen: string) => void)[] = [];
  const listeners = new Set<() => void>();
  const host: Pick<Host, "watch"> = {
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  const read = (): Promise<string> => new Promise((resolve) => looks.push(resolve));
  const Card = () => h("p", {}, useLiveQuery(host as Host, true, read) ?? "nothing yet");
  const change = async (): Promise<void> => {
    for (const listener of listeners) listener();
    await settled();
  };
  return { looks, change, Card };
};

describe("what a place of the pane watches", () => {
  it("is read one look at a time, and once more for all that changed during a look", async () => {
    const { looks, change, Card } = slowHost();
    const card = show(h(Card, {}));
    await settled();
    await change();
    await change();
    await change();
    expect(looks).toHaveLength(1);
    looks[0]?.("first");
    await seen(card, "first");
    expect(looks).toHaveLength(2);
    looks[1]?.("second");
    await seen(card, "second");
    await settled();
    expect(looks).toHaveLength(2);
    await change();
    expect(looks).toHaveLength(3);
  });

  it("isn't read again once the place is gone", async () => {
    const { looks, change, Card } = slowHost();
    const card = show(h(Card, {}));
    await settled();
    await change();
    await change();
    render(null, card);
    await settled();
    looks[0]?.("late");
    await settled();
    expect(looks).toHaveLength(1);
  });
});
