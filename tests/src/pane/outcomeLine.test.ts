/** @jest-environment jsdom */
import { h } from "preact";
import { OutcomeLine } from "../../../src/pane/parts/OutcomeLine";
import { show } from "../../support/card";

/** How often something was brought into view for an outcome with this message. */
const scrollsFor = async (message: string): Promise<number> => {
  const scroll = jest.spyOn(Element.prototype, "scrollIntoView").mockClear();
  show(h(OutcomeLine, { outcome: { kind: "written", message } }));
  await new Promise((resolve) => setTimeout(resolve, 50));
  return scroll.mock.calls.length;
};

describe("what came of a press", () => {
  it("comes into view where it says something, and leaves the pane where it is otherwise", async () => {
    expect(await scrollsFor("Issued.")).toBe(1);
    expect(await scrollsFor("")).toBe(0);
  });
});
