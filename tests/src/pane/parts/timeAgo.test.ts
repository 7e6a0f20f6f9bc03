import { timeAgo } from "../../../../src/pane/parts/timeAgo";

const MINUTE_MS = 60_000;

test.each([
  [0, "just now"],
  [59_999, "just now"],
  [-5_000, "just now"],
  [MINUTE_MS, "1 minute ago"],
  [4.9 * MINUTE_MS, "4 minutes ago"],
  [60 * MINUTE_MS, "1 hour ago"],
  [25 * 60 * MINUTE_MS, "1 day ago"],
  [400 * 24 * 60 * MINUTE_MS, "400 days ago"],
])("%d ms before now is %s", (passedMs, words) => {
  const now = Date.UTC(2026, 5, 1);
  expect(timeAgo(now - passedMs, now)).toBe(words);
});
