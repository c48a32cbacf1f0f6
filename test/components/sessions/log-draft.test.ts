import { describe, expect, it } from "vitest";
import { firstDraft, linesOf, missingIn } from "@/components/sessions/log-draft";
import { UNCOUNTED } from "@/server/domain/calendar/counted-pitches";

const athletes = [
  { athleteId: "a1", givenName: "Kit" },
  { athleteId: "a2", givenName: "Robin" },
] as never;
const head = { kind: "bullpen", startsAtMs: 0, endsAtMs: 45 * 60_000 } as never;

/** No speed was read; were one, it would be in miles an hour. */
const UNREAD = { ...UNCOUNTED, speedUnit: "mph" as const };

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
    const draft = { ...UNREAD, effort: null, work: {}, note: "" };
    const whole = {
      a1: { ...draft, attendance: "came" as const, minutes: 45, pitches: 0 },
      a2: { ...draft, attendance: "no_show" as const, minutes: null, pitches: null },
    };
    expect(missingIn(whole, athletes)).toEqual({});
    const miscounted = { a1: { ...whole.a1, strikes: 1, topSpeed: 60 }, a2: whole.a2 };
    expect(missingIn(miscounted, athletes)).toEqual({
      "strikes-a1": "There are no more strikes than pitches.",
      "speed-a1": "Without a pitch there is no speed to log.",
    });
    const slip = { a1: { ...whole.a1, pitches: 20, topSpeed: 715 }, a2: whole.a2 };
    expect(missingIn(slip, athletes)).toEqual({ "speed-a1": "A pitch is read at 20 to 110 mph." });
  });

  it("logs nothing for who stayed away, whatever was typed before", () => {
    const work = { c1: "confirmed" as const };
    const typed = { minutes: 45, pitches: 22, effort: 7, work };
    const lines = linesOf({
      a1: { ...UNREAD, strikes: 14, topSpeed: 60, attendance: "came", ...typed, note: "Good." },
      a2: { ...UNREAD, strikes: 14, topSpeed: 60, attendance: "no_show", ...typed, note: "Ill." },
    });
    expect(lines).toEqual([
      {
        athleteId: "a1",
        attendance: "came",
        minutes: 45,
        pitches: 22,
        effort: 7,
        ...{ strikes: 14, topSpeed: 60, speedUnit: "mph" },
        note: "Good.",
        work: [{ correctionId: "c1", outcome: "confirmed" }],
      },
      {
        athleteId: "a2",
        attendance: "no_show",
        minutes: 0,
        pitches: 0,
        effort: null,
        ...UNCOUNTED,
        note: "Ill.",
        work: [],
      },
    ]);
  });
});
