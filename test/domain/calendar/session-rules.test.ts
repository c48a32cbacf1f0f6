import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ArmRoom, sessionRoom } from "@/server/domain/calendar/arm-room";
import { claimsOf, isTaken, overlaps } from "@/server/domain/calendar/claims";
import { common, isWithin, merged, without } from "@/server/domain/calendar/intervals";
import { type SecondAdult, secondAdultMissing } from "@/server/domain/calendar/second-adult";
import {
  fitsLane,
  LANE_KINDS,
  MAX_SESSION_MIN,
  MIN_SESSION_MIN,
  SESSION_KIND,
  SESSION_KINDS,
  sessionEndMs,
  throwsOnMound,
} from "@/server/domain/calendar/session-kind";

describe("kinds of session", () => {
  it.each(SESSION_KINDS)("gives %s a length, a plan and a lane that go together", (kind) => {
    const facts = SESSION_KIND[kind];
    expect(sessionEndMs(0, facts.durationMin)).toBe(facts.durationMin * 60_000);
    expect(facts.plannedPitches > 0).toBe(throwsOnMound(kind));
    expect(LANE_KINDS.some((lane) => fitsLane(kind, lane))).toBe(true);
  });

  it("throws off a mound in all kinds but dry work, which fits flat ground too", () => {
    expect(SESSION_KINDS.filter((kind) => !throwsOnMound(kind))).toEqual(["dry_work"]);
    expect(SESSION_KINDS.filter((kind) => fitsLane(kind, "flat"))).toEqual(["dry_work"]);
    expect(SESSION_KINDS.every((kind) => fitsLane(kind, "mound"))).toBe(true);
  });

  it.each([MIN_SESSION_MIN - 1, MAX_SESSION_MIN + 1, 0, -30, 30.5, Number.NaN])(
    "throws for %d minutes",
    (minutes) => {
      expect(() => sessionEndMs(0, minutes)).toThrow(RangeError);
    },
  );

  it("allows the shortest and the longest session", () => {
    expect([sessionEndMs(0, MIN_SESSION_MIN), sessionEndMs(0, MAX_SESSION_MIN)]).toEqual([
      900_000, 14_400_000,
    ]);
  });
});

describe("what a session takes", () => {
  const session = { coachId: "p1", laneId: "l1", athleteIds: ["a2", "a1"], startsAtMs: 10, endsAtMs: 20 };
  const taken = (secondAdult: SecondAdult | null) =>
    claimsOf({ ...session, secondAdult }).map((claim) => claim.resource);

  it("is its coach, its lane and each athlete, once each and in order of name", () => {
    expect(taken(null)).toEqual(["athlete:a1", "athlete:a2", "coach:p1", "lane:l1"]);
    expect(claimsOf({ ...session, athleteIds: ["a1", "a1"], secondAdult: null })).toHaveLength(3);
    expect(
      claimsOf({ ...session, secondAdult: null }).every(
        (one) => one.startsAtMs === 10 && one.endsAtMs === 20,
      ),
    ).toBe(true);
  });

  it("is a second adult of the staff too, and not a guardian who watches", () => {
    expect(taken({ kind: "staff", personId: "p2" })).toContain("coach:p2");
    expect(taken({ kind: "guardian", personId: "g1" })).toEqual(taken(null));
  });

  it.each([
    ["the same span", [0, 10], [0, 10], true],
    ["one within the other", [0, 10], [3, 4], true],
    ["a shared last minute", [0, 10], [9, 20], true],
    ["an end that is a start", [0, 10], [10, 20], false],
    ["apart", [0, 10], [11, 20], false],
    ["an empty span", [0, 10], [5, 5], false],
  ] as const)("overlaps for %s: %j and %j, %s", (_name, [a, b], [c, d], expected) => {
    const [one, other] = [
      { startsAtMs: a, endsAtMs: b },
      { startsAtMs: c, endsAtMs: d },
    ];
    expect(overlaps(one, other)).toBe(expected);
    expect(overlaps(other, one)).toBe(expected);
  });

  it("takes nothing of another resource", () => {
    const busy = claimsOf({ ...session, secondAdult: null });
    expect(isTaken(busy, "coach:p1", { startsAtMs: 19, endsAtMs: 30 })).toBe(true);
    expect(isTaken(busy, "coach:p9", { startsAtMs: 19, endsAtMs: 30 })).toBe(false);
  });
});

describe("spans of time as sets of minutes", () => {
  const spans = fc.array(fc.record({ startMs: fc.nat({ max: 40 }), endMs: fc.nat({ max: 40 }) }), {
    maxLength: 6,
  });
  const minutes = (list: readonly { startMs: number; endMs: number }[]) =>
    Array.from({ length: 41 }, (_, minute) =>
      list.some((one) => one.startMs <= minute && minute < one.endMs),
    );

  it("joins, intersects and takes away as sets do", () => {
    fc.assert(
      fc.property(spans, spans, (a, b) => {
        const [inA, inB] = [minutes(a), minutes(b)];
        expect(minutes(merged(a))).toEqual(inA);
        expect(minutes(common(merged(a), merged(b)))).toEqual(inA.map((has, minute) => has && inB[minute]));
        expect(minutes(without(a, b))).toEqual(inA.map((has, minute) => has && !inB[minute]));
      }),
    );
  });

  it("keeps intervals apart from each other, so that one within them lies within one", () => {
    expect(
      merged([
        { startMs: 5, endMs: 9 },
        { startMs: 0, endMs: 5 },
      ]),
    ).toEqual([{ startMs: 0, endMs: 9 }]);
    expect(isWithin([{ startMs: 0, endMs: 9 }], 0, 9)).toBe(true);
    expect(isWithin([{ startMs: 0, endMs: 9 }], 0, 10)).toBe(false);
  });
});

describe("what the arms of a session leave", () => {
  const rooms: Record<string, ArmRoom> = {
    wide: { status: "at_most", pitches: 60, firstFreeDay: null },
    tight: { status: "at_most", pitches: 25, firstFreeDay: null },
    used: { status: "at_most", pitches: 0, firstFreeDay: "2026-12-02" },
    rests: { status: "resting", pitches: 0, firstFreeDay: "2026-12-03" },
    restsOn: { status: "resting", pitches: 0, firstFreeDay: null },
    hurts: { status: "pain", pitches: 0, firstFreeDay: null },
    old: { status: "no_published_limit", pitches: null, firstFreeDay: null },
  };
  const room = (...ids: string[]) =>
    sessionRoom(
      "group",
      ids.map((id) => ({ id, plannedPitches: 30 })),
      "2026-12-01",
      (id) => rooms[id] ?? { status: "no_published_limit", pitches: null, firstFreeDay: null },
    );

  it.each([
    [["wide"], { status: "at_most", atMost: 60, athleteId: "wide", holdsPlanned: true }],
    [["wide", "tight"], { status: "at_most", atMost: 25, athleteId: "tight", holdsPlanned: false }],
    [["old"], { status: "no_published_limit" }],
    [["old", "wide"], { status: "at_most", atMost: 60, athleteId: "wide", holdsPlanned: true }],
    [
      ["wide", "used"],
      { reason: "arm_resting", athleteId: "used", status: "resting", firstFreeDay: "2026-12-02" },
    ],
    [
      ["used", "rests"],
      { reason: "arm_resting", athleteId: "rests", status: "resting", firstFreeDay: "2026-12-03" },
    ],
    [
      ["rests", "restsOn"],
      { reason: "arm_resting", athleteId: "restsOn", status: "resting", firstFreeDay: null },
    ],
    [
      ["restsOn", "hurts", "wide"],
      { reason: "arm_resting", athleteId: "hurts", status: "pain", firstFreeDay: null },
    ],
  ])("is, for %j, %j", (ids, expected) => {
    expect(room(...ids)).toEqual(expected);
    expect(room(...[...ids].reverse())).toEqual(expected);
  });
});

describe("a second adult", () => {
  const minor = { id: "a1", bornOn: "2008-12-02", guardianIds: ["g1"] };
  const missing = (
    secondAdult: SecondAdult | null,
    over: Partial<{ day: string; athletes: (typeof minor)[] }> = {},
  ) =>
    secondAdultMissing({ coachId: "p1", athletes: [minor], day: "2026-12-01", secondAdult, ...over })?.why ??
    null;

  it.each([
    ["nobody named", null, "nobody_named"],
    ["the coach as staff", { kind: "staff", personId: "p1" }, "is_the_coach"],
    ["the coach as guardian", { kind: "guardian", personId: "p1" }, "is_the_coach"],
    ["somebody else's guardian", { kind: "guardian", personId: "g2" }, "not_their_guardian"],
    ["the guardian watching", { kind: "guardian", personId: "g1" }, null],
    ["another member of staff", { kind: "staff", personId: "p2" }, null],
  ] as const)("of %s comes to %j", (_name, secondAdult, why) => {
    expect(missing(secondAdult)).toBe(why);
  });

  it("is asked for on the day before the 18th birthday, and no more on it", () => {
    expect(missing(null, { day: "2026-12-01" })).toBe("nobody_named");
    expect(missing(null, { day: "2026-12-02" })).toBeNull();
  });

  it("is not asked for when two athletes come", () => {
    expect(missing(null, { athletes: [minor, { ...minor, id: "a2" }] })).toBeNull();
    expect(missing(null, { athletes: [] })).toBeNull();
  });
});
