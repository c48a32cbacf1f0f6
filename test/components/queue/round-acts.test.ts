import { describe, expect, it } from "vitest";
import { actsOn, actsOnAwaited, firstActOf, isIn } from "@/components/queue/round-acts";
import type { AwaitedRow, OwedRow } from "@/server/api/read-queue";

const COACH = { personId: "coach", isCoach: true };
const ADMIN = { personId: "admin", isCoach: false };

const round = (changes: Partial<OwedRow> = {}): OwedRow => ({
  roundId: "r",
  athleteId: "a",
  athleteName: "Kit Marsh",
  ageYears: 12,
  coachPersonId: null,
  coachName: null,
  isOwnAthlete: false,
  siteName: "North site",
  zone: "UTC",
  state: "received",
  kind: "first",
  views: [],
  receivedAtMs: 0,
  dueAtMs: 0,
  lateness: { kind: "left", leftMs: 0 },
  estimateMin: 20,
  openCorrections: [],
  ...changes,
});
const taken = (by: string) => round({ state: "taken", coachPersonId: by });

describe("the queue offers", () => {
  it("a coach to take what nobody has, to go on with their own, and to look at the rest", () => {
    expect(firstActOf(round(), COACH)).toBe("take");
    expect(firstActOf(taken("coach"), COACH)).toBe("go_on");
    expect(firstActOf(taken("other"), COACH)).toBe("look");
    expect(firstActOf(round(), ADMIN)).toBe("look");
  });

  it("only acts that will not be refused", () => {
    expect(actsOn(round(), COACH)).toEqual(["hand_over", "ask_retake", "withdraw"]);
    expect(actsOn(taken("coach"), COACH)).toEqual(["put_back", "hand_over", "ask_retake", "withdraw"]);
    expect(actsOn(taken("other"), COACH)).toEqual(["hand_over", "withdraw"]);
    expect(actsOn(round(), ADMIN)).toEqual(["hand_over", "withdraw"]);
    const reply = round({ state: "answered", coachPersonId: "coach", kind: "reply" });
    expect(actsOn(reply, COACH)).toEqual(["hand_over", "ask_retake"]);
    const waits = { ...round(), state: "sent", mayBeWithdrawn: false } as unknown as AwaitedRow;
    expect(actsOnAwaited(waits)).toEqual(["hand_over"]);
    expect(actsOnAwaited({ ...waits, state: "retake", mayBeWithdrawn: true })).toEqual(["withdraw"]);
  });

  it("as mine what I have and what my athletes sent that nobody has yet", () => {
    expect(isIn("mine", taken("coach"), COACH)).toBe(true);
    expect(isIn("mine", round({ isOwnAthlete: true }), COACH)).toBe(true);
    expect(isIn("mine", round({ ...taken("other"), isOwnAthlete: true }), COACH)).toBe(false);
    expect(isIn("free", taken("coach"), COACH)).toBe(false);
    expect(isIn("free", round(), COACH)).toBe(true);
    expect(isIn("all", taken("other"), COACH)).toBe(true);
  });
});
