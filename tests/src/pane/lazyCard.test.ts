/** @jest-environment jsdom */
import { h } from "preact";
import { lazyCard } from "../../../src/pane/lazyCard";
import { press, seen, show } from "../../support/card";

describe("a part of the pane that is loaded later", () => {
  it("comes when it is first shown, with what it was given", async () => {
    const Part = lazyCard<{ name: string }>(() => Promise.resolve(({ name }) => h("p", {}, `for ${name}`)));
    const pane = show(h(Part, { name: "porch" }));
    expect(pane.textContent).toBe("Loading…");
    await seen(pane, "for porch");
    expect(pane.textContent).toBe("for porch");
  });

  it("that can't be loaded says so, and can be asked for again", async () => {
    let tries = 0;
    const Part = lazyCard(() =>
      ++tries === 1
        ? Promise.reject(new Error("The network is gone."))
        : Promise.resolve(() => h("p", {}, "here it is")),
    );
    const pane = show(h(Part, {}));
    await seen(pane, "This part of the pane couldn't be loaded. The network is gone.");
    press(pane, "Try again");
    await seen(pane, "here it is");
    expect(tries).toBe(2);
  });

  it("whose script doesn't come says so in plain words", async () => {
    const missing = Object.assign(new Error("Loading chunk 7 failed. (error: 7.js)"), {
      name: "ChunkLoadError",
    });
    const pane = show(
      h(
        lazyCard(() => Promise.reject(missing)),
        {},
      ),
    );
    await seen(pane, "couldn't be loaded. It didn't come over the network: look at the connection");
    expect(pane.textContent).not.toContain("chunk");
  });
});
