import { measuringOf } from "../../../../functions/practice/measuring";
import { tapeTopic } from "../../../../src/practice/topics/tape";

describe("the tape's problem", () => {
  it.each([
    [126, "10 ft"],
    [120, "10 ft"],
    [119.75, "9 ft"],
  ])(
    "names the last whole foot before a pointer at %d in, even if its mark isn't drawn",
    (readingIn, foot) => {
      const measuring = measuringOf("feet and inches", "half day");
      const facts = { readingIn, otherIn: 99, markIn: 0.25 };
      expect(tapeTopic.ask(facts, { level: "half day", measuring }).text).toContain(
        `The last whole foot at or before the pointer is ${foot}; the numbers are inches past a whole foot.`,
      );
    },
  );
});
