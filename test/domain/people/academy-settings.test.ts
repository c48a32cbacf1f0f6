import { expect, it } from "vitest";
import { academySettings, promiseInWords, STARTING_SETTINGS } from "@/server/domain/people/academy-settings";

it.each([
  [{ promiseKind: "working_days", promiseAmount: 1 } as const, "1 working day"],
  [{ promiseKind: "working_days", promiseAmount: 2 } as const, "2 working days"],
  [{ promiseKind: "working_hours", promiseAmount: 1 } as const, "1 working hour"],
  [{ promiseKind: "working_hours", promiseAmount: 48 } as const, "48 working hours"],
])("says what is promised: %o", (settings, words) => {
  expect(promiseInWords(settings)).toBe(words);
});

it.each([
  ["what a new academy starts with", {}, true],
  ["one correction at a time", { maxOpenCorrections: 1 }, true],
  ["no correction at all", { maxOpenCorrections: 0 }, false],
  ["a promise of half a day", { promiseAmount: 0.5 }, false],
  ["clips kept for six days", { clipRetentionDays: 6 }, false],
  ["booking without notice", { bookingNoticeMin: 0 }, true],
  ["an academy without a name", { name: "  " }, false],
])("takes or refuses %s", (_, change, isTaken) => {
  expect(academySettings.safeParse({ ...STARTING_SETTINGS, ...change }).success).toBe(isTaken);
});
