import fc from "fast-check";
import type { AcademyTime } from "@/server/domain/calendar/academy-time";
import type { ArmRoom } from "@/server/domain/calendar/arm-room";
import type { Claim, ClaimResource } from "@/server/domain/calendar/claims";
import { LANE_KINDS, SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import type { TimeSearch } from "@/server/domain/calendar/slot-finder";
import { type MinuteClock, minuteClock } from "./minute-clock";

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Zones with the US change at 02:00, with none, with one at midnight, and with one of half an hour. */
const ZONES = ["America/New_York", "America/Phoenix", "America/Havana", "Australia/Lord_Howe"] as const;

/** Three days each: around both US changes, both of Lord Howe, a year's end, and a leap day. */
export const SPAN_STARTS = [
  "2026-03-07",
  "2026-11-01",
  "2026-04-04",
  "2026-10-03",
  "2026-12-31",
  "2028-02-28",
] as const;
const SPAN_DAYS = 3;

const clocks = new Map<string, MinuteClock>();

/** The minute clock of a site for a span, with two days on either side; made once. */
export function clockFor(zone: string, spanStart: string): MinuteClock {
  const key = `${zone} ${spanStart}`;
  const startMs = Date.parse(`${spanStart}T00:00Z`);
  const clock =
    clocks.get(key) ?? minuteClock(zone, startMs - 2 * DAY_MS, startMs + (SPAN_DAYS + 2) * DAY_MS);
  clocks.set(key, clock);
  return clock;
}

export interface RandomSearch {
  spanStart: string;
  search: TimeSearch;
}

const halfHour = (maxMin: number) => fc.nat({ max: maxMin / 30 }).map((halves) => halves * 30);

const week = fc
  .array(
    fc.record({
      weekday: fc.integer({ min: 1, max: 7 }),
      opensMin: halfHour(1080),
      lengthMin: halfHour(1440),
    }),
    { minLength: 4, maxLength: 14 },
  )
  .map((list) =>
    list.map(({ weekday, opensMin, lengthMin }) => ({
      weekday,
      opensMin,
      closesMin: Math.min(1440, opensMin + lengthMin),
    })),
  );

/** Open day and night on some weekdays, so that sessions over midnight and in the changed hours come up. */
const longWeek = fc
  .subarray([1, 2, 3, 4, 5, 6, 7], { minLength: 3 })
  .map((days) => days.map((weekday) => ({ weekday, opensMin: 0, closesMin: 1440 })));

const anyWeek = fc.oneof(week, longWeek);

function spanWithin(fromMs: number) {
  const lengthMs = SPAN_DAYS * DAY_MS;
  return fc
    .record({ startMin: fc.nat({ max: lengthMs / MINUTE_MS }), lengthMin: fc.integer({ min: 1, max: 240 }) })
    .map(({ startMin, lengthMin }) => ({
      startMs: fromMs + startMin * MINUTE_MS,
      endMs: fromMs + (startMin + lengthMin) * MINUTE_MS,
    }));
}

function academy(fromMs: number, spanStart: string): fc.Arbitrary<AcademyTime> {
  const site = fc.record({
    zone: fc.constantFrom(...ZONES),
    week: anyWeek,
    closedOn: fc.subarray([spanStart], { maxLength: 1 }).map((days) => new Set(days)),
  });
  const resource = fc.constantFrom<ClaimResource>(
    ...["c1", "c2", "c3"].map((id) => `coach:${id}` as const),
    ...["l1", "l2", "l3", "l4"].map((id) => `lane:${id}` as const),
    ...["a1", "a2", "a3"].map((id) => `athlete:${id}` as const),
  );
  const busy: fc.Arbitrary<Claim[]> = fc.array(
    fc.tuple(resource, spanWithin(fromMs)).map(([taken, { startMs, endMs }]) => ({
      ...{ resource: taken, startsAtMs: startMs, endsAtMs: endMs },
    })),
    { maxLength: 24 },
  );
  const coach = fc.record({
    hours: fc.array(fc.record({ siteId: fc.constantFrom("s1", "s2"), week: anyWeek }), {
      minLength: 1,
      maxLength: 3,
    }),
    absences: fc.array(spanWithin(fromMs), { maxLength: 2 }),
  });
  const lane = fc.record({ siteId: fc.constantFrom("s1", "s2"), kind: fc.constantFrom(...LANE_KINDS) });
  return fc.record({
    sites: fc
      .array(site, { minLength: 1, maxLength: 2 })
      .map((list) => list.map((hours, index) => ({ id: `s${index + 1}`, hours }))),
    lanes: fc
      .array(lane, { minLength: 1, maxLength: 4 })
      .map((list) => list.map((one, index) => ({ id: `l${index + 1}`, ...one }))),
    coaches: fc
      .array(coach, { minLength: 1, maxLength: 3 })
      .map((list) => list.map((one, index) => ({ id: `c${index + 1}`, ...one }))),
    busy,
  });
}

const armRoom: fc.Arbitrary<ArmRoom> = fc.oneof(
  fc.record({
    status: fc.constant("at_most" as const),
    pitches: fc.nat({ max: 60 }),
    firstFreeDay: fc.constantFrom(null, "2026-12-24"),
  }),
  fc.record({
    status: fc.constantFrom("resting" as const, "pain" as const),
    pitches: fc.constant(0),
    firstFreeDay: fc.constantFrom(null, "2026-12-24", "2026-12-25"),
  }),
  fc.constant({ status: "no_published_limit" as const, pitches: null, firstFreeDay: null }),
);

/** A small academy and something looked for in it. */
export const randomSearch: fc.Arbitrary<RandomSearch> = fc.constantFrom(...SPAN_STARTS).chain((spanStart) => {
  const fromMs = Date.parse(`${spanStart}T00:00Z`);
  return fc
    .record({
      academy: academy(fromMs, spanStart),
      kind: fc.constantFrom(...SESSION_KINDS),
      durationMin: fc.constantFrom(15, 30, 45, 50, 90, 240),
      athleteIds: fc.subarray(["a1", "a2", "a3"], { minLength: 1 }),
      plannedPitches: fc.nat({ max: 50 }),
      lateMin: fc.nat({ max: 600 }),
      earlyMin: fc.nat({ max: 600 }),
      nowMin: fc.integer({ min: -600, max: 1500 }),
      noticeMin: fc.constantFrom(0, 120),
      stepMin: fc.constantFrom(15, 20, 30, 35),
      wish: fc.option(
        fc.record({ weekdays: fc.subarray([1, 2, 3, 6, 7]), fromMin: halfHour(1200), toMin: halfHour(1440) }),
      ),
      preferredCoachId: fc.constantFrom(null, "c1", "c2"),
      rooms: fc.array(armRoom, { minLength: 7, maxLength: 7 }),
      limit: fc.constantFrom(3, 10_000, 10_000),
      limitPerDay: fc.constantFrom(undefined, undefined, 2, 25),
    })
    .map(({ academy: known, lateMin, earlyMin, nowMin, rooms, limitPerDay, ...rest }) => ({
      spanStart,
      search: {
        ...known,
        ...rest,
        ...(limitPerDay === undefined ? {} : { limitPerDay }),
        window: {
          fromMs: fromMs + lateMin * MINUTE_MS,
          toMs: fromMs + SPAN_DAYS * DAY_MS - earlyMin * MINUTE_MS,
        },
        nowMs: fromMs + nowMin * MINUTE_MS,
        roomOn: (athleteId: string, day: string) => {
          const pick = (Number(athleteId.slice(1)) + Number(day.slice(8))) % rooms.length;
          return rooms[pick] ?? { status: "resting", pitches: 0, firstFreeDay: null };
        },
      },
    }));
});
