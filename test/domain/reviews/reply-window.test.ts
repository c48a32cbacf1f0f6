import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hasLapsed, replyWindow } from "@/server/domain/reviews/reply-window";
import { addDays } from "@/server/domain/time/calendar-day";

describe("the time for a reply", () => {
  it.each([
    ["the arm is free already", "2026-11-01", 21, "2026-10-20", "2026-11-01", "2026-11-22", "2026-11-23"],
    ["the arm rests first", "2026-11-01", 21, "2026-11-04", "2026-11-04", "2026-11-22", "2026-11-23"],
    [
      "the arm rests longer than the span",
      "2026-11-01",
      3,
      "2026-11-06",
      "2026-11-06",
      "2026-11-06",
      "2026-11-07",
    ],
    ["the year ends", "2026-12-20", 21, "2026-12-20", "2026-12-20", "2027-01-10", "2027-01-11"],
    ["a leap day lies between", "2028-02-20", 9, "2028-02-20", "2028-02-20", "2028-02-29", "2028-03-01"],
  ])(
    "when %s: sent %s, span %i, free %s",
    (_case, sentOn, spanDays, armFreeOn, replyFrom, dueOn, lapsesOn) => {
      expect(replyWindow({ sentOn, spanDays, armFreeOn })).toEqual({ replyFrom, dueOn, lapsesOn });
    },
  );

  it("has no day while pain stops all throwing, and then nothing lapses", () => {
    const window = replyWindow({ sentOn: "2026-11-01", spanDays: 21, armFreeOn: null });
    expect(window).toEqual({ replyFrom: null, dueOn: null, lapsesOn: null });
    expect(hasLapsed(window.lapsesOn, "2030-01-01")).toBe(false);
  });

  it("is over on the day after the due day, not on it", () => {
    const { dueOn, lapsesOn } = replyWindow({ sentOn: "2026-11-01", spanDays: 21, armFreeOn: "2026-11-01" });
    expect(hasLapsed(lapsesOn, dueOn ?? "")).toBe(false);
    expect(hasLapsed(lapsesOn, lapsesOn ?? "")).toBe(true);
  });

  it("never asks for or awaits a reply before the arm's first free day, nor shortens the span", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: -30, max: 200 }),
        (spanDays, freeAfter) => {
          const sentOn = "2026-10-15";
          const armFreeOn = addDays(sentOn, freeAfter);
          const window = replyWindow({ sentOn, spanDays, armFreeOn });
          expect((window.replyFrom ?? "") >= armFreeOn).toBe(true);
          expect((window.dueOn ?? "") >= (window.replyFrom ?? "~")).toBe(true);
          expect((window.dueOn ?? "") >= addDays(sentOn, spanDays)).toBe(true);
          expect(hasLapsed(window.lapsesOn, window.dueOn ?? "~")).toBe(false);
        },
      ),
    );
  });
});
