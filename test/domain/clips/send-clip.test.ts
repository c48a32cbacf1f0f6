import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLIP_PARTS, CLIP_STATES, PITCH_TYPE_WORDS, PITCH_TYPES } from "@/server/domain/clips/clip";
import {
  isPastRetention,
  MAX_CLIPS_AT_ONCE,
  pitchesToLog,
  retainUntil,
  type SendClipInput,
  sendClipsInput,
  sendingRefusal,
} from "@/server/domain/clips/send-clip";
import { addDays } from "@/server/domain/time/calendar-day";

const clip = (changes: Partial<SendClipInput> = {}): SendClipInput => ({
  clipId: "clip1",
  view: "open_side",
  pitchType: "fastball",
  pitchesThrown: 12,
  alreadyOnLog: false,
  note: "",
  filmedOn: "2026-11-28",
  ...changes,
});
const facts = { consentIsLive: true, athleteGivenName: "Wren", today: "2026-11-28" };

describe("what the family says of a clip", () => {
  it.each([
    ["a clip", [clip()]],
    ["dry work", [clip({ pitchesThrown: 0, pitchType: null })]],
    ["the most pitches that are believed", [clip({ pitchesThrown: 400 })]],
    ["a leap day", [clip({ filmedOn: "2028-02-29" })]],
    [
      "the most clips at once",
      Array.from({ length: MAX_CLIPS_AT_ONCE }, (_, n) => clip({ clipId: `clip${n}` })),
    ],
  ])("is taken for %s", (_case, clips) => {
    expect(sendClipsInput.parse(clips)).toEqual(clips);
  });

  it.each([
    ["no clip", [], ""],
    ["one clip named twice", [clip(), clip()], ""],
    ["seven clips", Array.from({ length: 7 }, (_, n) => clip({ clipId: `clip${n}` })), ""],
    ["a view nobody knows", [{ ...clip(), view: "above" }], "view"],
    ["a pitch type nobody knows", [{ ...clip(), pitchType: "spitball" }], "pitchType"],
    ["fewer than no pitches", [clip({ pitchesThrown: -1 })], "pitchesThrown"],
    ["half a pitch", [clip({ pitchesThrown: 1.5 })], "pitchesThrown"],
    ["401 pitches", [clip({ pitchesThrown: 401 })], "pitchesThrown"],
    ["a note too long", [clip({ note: "x".repeat(1001) })], "note"],
    ["a day that does not exist", [clip({ filmedOn: "2026-02-29" })], "filmedOn"],
    ["no word on the log", [{ ...clip(), alreadyOnLog: undefined }], "alreadyOnLog"],
  ])("is refused with %s, naming the field", (_case, clips, field) => {
    const result = sendClipsInput.safeParse(clips);
    expect(result.success).toBe(false);
    expect(result.error?.issues[0]?.path[1] ?? "").toBe(field);
  });
});

describe("clips are sent together", () => {
  it("when consent is live and all are of one day that has come", () => {
    expect(sendingRefusal([clip(), clip({ clipId: "clip2", view: "back" })], facts)).toBeNull();
    expect(sendingRefusal([clip({ filmedOn: "2026-11-20" })], facts)).toBeNull();
  });

  it.each([
    [
      "without a live consent, before anything else",
      [clip({ filmedOn: "2026-12-01" })],
      { consentIsLive: false },
      { reason: "consent_missing", athleteGivenName: "Wren" },
    ],
    ["of two days", [clip(), clip({ filmedOn: "2026-11-27" })], {}, { reason: "clips_of_two_days" }],
    [
      "of a day to come",
      [clip({ filmedOn: "2026-11-29" })],
      {},
      { reason: "throw_entry_invalid", why: "The clip is dated in the future." },
    ],
  ])("not %s", (_case, clips, changes, refusal) => {
    expect(sendingRefusal(clips, { ...facts, ...changes })).toEqual(refusal);
  });

  it("add to the log only the pitches that are not in an outing already", () => {
    expect(pitchesToLog([clip(), clip({ pitchesThrown: 30, alreadyOnLog: true })])).toBe(12);
    expect(pitchesToLog([])).toBe(0);
    const clips = fc.array(fc.record({ pitchesThrown: fc.nat(400), alreadyOnLog: fc.boolean() }), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(clips, (sent) => {
        const onLog = pitchesToLog(sent.map((one) => ({ ...one, alreadyOnLog: !one.alreadyOnLog })));
        expect(pitchesToLog(sent) + onLog).toBe(sent.reduce((sum, one) => sum + one.pitchesThrown, 0));
      }),
    );
  });
});

describe("a clip is kept", () => {
  it.each([
    ["2026-11-28", 180, "2027-05-27"],
    ["2028-02-28", 1, "2028-02-29"],
    ["2026-12-31", 7, "2027-01-07"],
  ])("from %s for %i days, to the end of %s", (receivedOn, days, last) => {
    expect(retainUntil(receivedOn, days)).toBe(last);
    expect(isPastRetention(last, last)).toBe(false);
    expect(isPastRetention(last, addDays(last, 1))).toBe(true);
  });
});

describe("the lists of a clip", () => {
  it("name each part and state once and give each pitch type words", () => {
    for (const list of [CLIP_PARTS, CLIP_STATES]) expect(new Set(list).size).toBe(list.length);
    expect(PITCH_TYPES.map((type) => PITCH_TYPE_WORDS[type])).toEqual([
      "Fastball",
      "Change-up",
      "Curveball",
      "Slider",
      "Other",
    ]);
  });
});
