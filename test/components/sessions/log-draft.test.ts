import { describe, expect, it } from "vitest";
import { firstDraft, linesOf, missingIn } from "@/components/sessions/log-draft";

const athletes = [
  { athleteId: "a1", givenName: "Kit" },
  { athleteId: "a2", givenName: "Robin" },
] as never;
const head = { kind: "bullpen", startsAtMs: 0, endsAtMs: 45 * 60_000 } as never;

describe("a log while it is being written", () => {
  it("begins with the booked length and without a number of pitches, which is never taken for granted", () => {
    expect(firstDraft({ head, athletes }).a1).toMatchObject({
      attendance: "came",
      minutes: 45,
      pitches: null,
      effort: null,
    });
    const dry = { kind: "dry_work", startsAtMs: 0, endsAtMs: 1 } as never;
    expect(firstDraft({ head: dry, athletes }).a1?.pitches).toBe(0);
  });

  it("names what is missing, of those who came alone", () => {
    const drafts = firstDraft({ head, athletes });
    expect(missingIn(drafts, athletes)).toEqual({
      "pitches-a1": "Say how many pitches Kit threw, 0 for none.",
      "pitches-a2": "Say how many pitches Robin threw, 0 for none.",
    });
    const whole = {
      a1: { attendance: "came" as const, minutes: 45, pitches: 0, effort: null, work: {}, note: "" },
      a2: { attendance: "no_show" as const, minutes: null, pitches: null, effort: null, work: {}, note: "" },
    };
    expect(missingIn(whole, athletes)).toEqual({});
  });

  it("logs nothing for who stayed away, whatever was typed before", () => {
    const work = { c1: "confirmed" as const };
    const lines = linesOf({
      a1: { attendance: "came", minutes: 45, pitches: 22, effort: 7, work, note: "Good." },
      a2: { attendance: "no_show", minutes: 45, pitches: 22, effort: 7, work, note: "Ill." },
    });
    expect(lines).toEqual([
      {
        athleteId: "a1",
        attendance: "came",
        minutes: 45,
        pitches: 22,
        effort: 7,
        note: "Good.",
        work: [{ correctionId: "c1", outcome: "confirmed" }],
      },
      {
        athleteId: "a2",
        attendance: "no_show",
        minutes: 0,
        pitches: 0,
        effort: null,
        note: "Ill.",
        work: [],
      },
    ]);
  });
});
