import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AddressParams,
  askedTimes,
  athletesIn,
  readTimeSearch,
  type TimeSearch,
  timeSearchQuery,
} from "@/components/sessions/time-search";
import { SESSION_KINDS, throwsOnMound } from "@/server/domain/calendar/session-kind";
import { addDays } from "@/server/domain/time/calendar-day";

const DEFAULTS: TimeSearch = {
  athleteIds: ["ath_1"],
  kind: "lesson",
  durationMin: 60,
  plannedPitches: 35,
  fromDay: "2026-11-25",
  toDay: "2026-12-08",
  coachPersonId: "per_1",
  siteId: null,
  weekdays: [],
  dayPart: "any",
  roundId: null,
  moveSessionId: null,
};

const paramsOf = (query: string): AddressParams => Object.fromEntries(new URLSearchParams(query));

describe("a search in an address", () => {
  it("is read as it was written, whatever is looked for", () => {
    const id = fc.option(fc.stringMatching(/^[a-z]{3}_[0-9a-z]{4}$/), { nil: null });
    const search = fc.record({
      athleteIds: fc.constant(DEFAULTS.athleteIds),
      kind: fc.constantFrom(...SESSION_KINDS),
      durationMin: fc.integer({ min: 15, max: 240 }),
      plannedPitches: fc.integer({ min: 0, max: 400 }),
      fromDay: fc.integer({ min: 0, max: 400 }).map((days) => addDays("2026-01-01", days)),
      toDay: fc.integer({ min: 400, max: 800 }).map((days) => addDays("2026-01-01", days)),
      coachPersonId: id,
      siteId: id,
      weekdays: fc.subarray([1, 2, 3, 4, 5, 6, 7]),
      dayPart: fc.constantFrom("any" as const, "morning" as const, "afternoon" as const, "evening" as const),
      roundId: id,
      moveSessionId: id,
    });
    fc.assert(
      fc.property(search, (asked) => {
        const told = { ...asked, plannedPitches: throwsOnMound(asked.kind) ? asked.plannedPitches : 0 };
        expect(readTimeSearch(paramsOf(timeSearchQuery(told)), DEFAULTS)).toEqual(told);
      }),
    );
  });

  const cases: [string, string, Partial<TimeSearch>][] = [
    ["nothing said: the defaults", "", {}],
    [
      "another kind comes with its own length and pitches",
      "kind=bullpen",
      { kind: "bullpen", durationMin: 30, plannedPitches: 30 },
    ],
    [
      "no pitches without mound throws",
      "kind=dry_work&pitches=40",
      { kind: "dry_work", durationMin: 45, plannedPitches: 0 },
    ],
    [
      "nonsense is left out",
      "kind=juggling&minutes=7&pitches=-3&from=2026-02-30&weekdays=089x&part=dawn",
      {},
    ],
    ["an empty coach is any coach", "coach=", { coachPersonId: null }],
    [
      "a last day before the first is the first",
      "from=2026-12-10&to=2026-12-01",
      { fromDay: "2026-12-10", toDay: "2026-12-10" },
    ],
  ];
  for (const [name, query, part] of cases) {
    it(name, () => expect(readTimeSearch(paramsOf(query), DEFAULTS)).toEqual({ ...DEFAULTS, ...part }));
  }

  it("wishes for nothing unless a day or a part of the day is named", () => {
    expect(askedTimes(DEFAULTS).wish).toBeNull();
    expect(askedTimes({ ...DEFAULTS, dayPart: "evening" }).wish).toEqual({
      weekdays: [],
      fromMin: 1080,
      toMin: 1440,
    });
    expect(askedTimes({ ...DEFAULTS, weekdays: [2] }).wish).toEqual({
      weekdays: [2],
      fromMin: 0,
      toMin: 1440,
    });
  });

  it("names each athlete once, eight at most", () => {
    expect(athletesIn({ athletes: "a,b,,a", athlete: "c" })).toEqual(["a", "b", "c"]);
    expect(athletesIn({ athletes: "abcdefghijk".split("").join(",") })).toHaveLength(8);
    expect(athletesIn({})).toEqual([]);
  });
});
