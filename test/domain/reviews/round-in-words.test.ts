import { describe, expect, it } from "vitest";
import { ROUND_STATE_WORDS, roundInWords, type ToldRound } from "@/server/domain/reviews/round-in-words";
import { ROUND_STATES } from "@/server/domain/reviews/round-state";
import { instantOf } from "@/server/domain/time/calendar-day";

const ZONE = "America/New_York";
const told = (round: Partial<ToldRound>) =>
  roundInWords(
    { state: "sent", dueAtMs: null, replyFrom: null, lapsesOn: null, ...round },
    "2026-11-25",
    ZONE,
  );

describe("a round in words", () => {
  it("says what the academy owes and by when, on the site's clock", () => {
    const dueAtMs = instantOf("2026-11-27", 1020, ZONE);
    expect(told({ state: "received", dueAtMs })).toBe(
      "The clip is in. A review is owed, due by Fri 27 Nov 17:00.",
    );
    expect(told({ state: "taken", dueAtMs })).toContain("A coach has the clip.");
    expect(told({ state: "answered", dueAtMs })).toContain("The check is owed");
  });

  it("asks for a clip from the arm's first free day, until the last day it still counts", () => {
    const window = { replyFrom: "2026-11-29", lapsesOn: "2026-12-17" };
    expect(told(window)).toBe("A new clip is asked for from Sun 29 Nov on, until Wed 16 Dec.");
    expect(told({ ...window, replyFrom: "2026-11-25" })).toBe("A new clip is asked for until Wed 16 Dec.");
    expect(told({ state: "retake", ...window })).toContain("another one is asked for from Sun 29 Nov");
  });

  it("asks for none while nobody knows when the arm may throw", () => {
    expect(told({})).toBe("A new clip is asked for once the arm may throw again.");
  });

  it("has words for every state and says how an ended one ended", () => {
    expect(ROUND_STATES.every((state) => ROUND_STATE_WORDS[state].length > 0)).toBe(true);
    expect(told({ state: "lapsed" })).toBe("The last round is lapsed without a reply.");
  });
});
