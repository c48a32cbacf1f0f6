import { describe, expect, it } from "vitest";
import { armAnswers } from "@/server/domain/calendar/arm-answers";
import { bookingLimits, isTooFarAhead, STAFF_HORIZON_DAYS } from "@/server/domain/calendar/booking-limits";
import { followUpWindow } from "@/server/domain/calendar/follow-up";
import { plannedNow, plannedNowInWords } from "@/server/domain/calendar/planned-now";
import { sessionNotice } from "@/server/domain/calendar/session-in-words";
import { refusedSpans, timeInSentence } from "@/server/domain/calendar/time-in-words";
import { timeRefusalDetail } from "@/server/domain/calendar/time-refusal-detail";
import { USA_BASEBALL_2018 } from "@/server/domain/throwing/books/usa-baseball-2018";
import { CAUTIOUS_READING } from "@/server/domain/throwing/throw-entry";
import { NO_GAME } from "@/server/domain/throwing/validate-game";
import { instantOf } from "@/server/domain/time/calendar-day";

const ZONE = "America/New_York";

/** A 12-year-old who threw 51 on Wed 25 Nov 2026, with a bullpen of 40 planned on Tue 1 Dec. */
const arm = {
  bornOn: "2014-05-10",
  books: [USA_BASEBALL_2018] as const,
  overrides: [],
  today: "2026-11-26",
  reading: CAUTIOUS_READING,
  entries: [
    {
      ...{ id: "t1", athleteId: "a1", thrownOn: "2026-11-25", kind: "game" as const, pitches: 51 },
      ...{ ...NO_GAME, replacesId: null, reportedAtMs: 0 },
    },
  ],
  planned: [{ id: "s1:a1", plannedOn: "2026-12-01", kind: "bullpen" as const, pitches: 40, teamId: null }],
  pain: null,
  lastReportedOn: "2026-11-25",
};
const pain = {
  kind: "pain" as const,
  firstFeltOn: "2026-11-24",
  lastFeltOn: "2026-11-24",
  reportIds: ["p1"],
};

describe("a found time in one sentence", () => {
  const time = {
    startsAtMs: instantOf("2026-12-01", 1020, ZONE),
    zone: ZONE,
    siteName: null,
    laneName: "Lane 2",
    coachName: "Cole Rivers",
    room: { status: "at_most", atMost: 40, athleteId: "a1", holdsPlanned: true } as const,
    plannedPitches: 40,
    athleteName: null,
  };
  const cases: [string, Partial<Parameters<typeof timeInSentence>[0]>, string][] = [
    ["room for all", {}, "Tue 1 Dec 17:00, Lane 2, with Cole Rivers: at most 40 by the book."],
    [
      "a site, where there are several",
      { siteName: "North site" },
      "Tue 1 Dec 17:00, North site, Lane 2, with Cole Rivers: at most 40 by the book.",
    ],
    [
      "less room than is planned, and whose",
      { room: { status: "at_most", atMost: 15, athleteId: "a1", holdsPlanned: false }, athleteName: "Kit" },
      "Tue 1 Dec 17:00, Lane 2, with Cole Rivers: at most 15 by the book for Kit, fewer than the 40 planned.",
    ],
    [
      "no throws",
      { room: { status: "no_throws" } },
      "Tue 1 Dec 17:00, Lane 2, with Cole Rivers: no mound throws.",
    ],
    [
      "no number",
      { room: { status: "no_published_limit" } },
      "Tue 1 Dec 17:00, Lane 2, with Cole Rivers: no published limit.",
    ],
  ];
  for (const [name, over, sentence] of cases) {
    it(name, () => expect(timeInSentence({ ...time, ...over })).toBe(sentence));
  }
});

describe("refused days", () => {
  it("are told once for the same reason, and dry work fits when it fits one of them", () => {
    const answers = armAnswers(
      new Map([
        ["a1", { ...arm, planned: [] }],
        ["a2", { ...arm, planned: [], pain }],
      ]),
    );
    const days = ["2026-11-26", "2026-11-27", "2026-11-28"];
    const refused = days.map((day) => ({
      ...{ day, dryWorkFits: day === "2026-11-27", answer: answers.on("a1", day) },
    }));
    expect(refusedSpans(refused)).toEqual([
      {
        ...{ fromDay: "2026-11-26", toDay: "2026-11-28", status: "resting", firstFreeDay: "2026-11-29" },
        dryWorkFits: true,
        sentence:
          "Thu 26 Nov to Sat 28 Nov: none by the book. 51 on Wed 25 Nov asks for three days of rest; free again Sun 29 Nov.",
      },
    ]);
    const pained = { day: "2026-11-28", dryWorkFits: false, answer: answers.on("a2", "2026-11-28") };
    expect(refusedSpans([...refused, pained]).map((span) => span.sentence)[1]).toBe(
      "Sat 28 Nov: Pain was reported on Tue 24 Nov: no throwing until the guardian clears it.",
    );
    expect(refusedSpans([])).toEqual([]);
  });
});

describe("what a booked session asks for now", () => {
  const cases: [string, object, string, boolean][] = [
    ["room enough", {}, "asks for 40, at most 85 by the book now", true],
    [
      "an outing two days later",
      { planned: [...arm.planned, { id: "o1", plannedOn: "2026-12-03", kind: "game", pitches: 60 }] },
      "asks for 40, at most 35 by the book now",
      false,
    ],
    [
      "a game logged the day before",
      { entries: [{ ...arm.entries[0], thrownOn: "2026-11-30" }] },
      "asks for 40, none by the book now",
      false,
    ],
    ["pain", { pain }, "asks for 40, no throwing now: pain reported", false],
    ["an age the book says nothing of", { bornOn: "1990-01-01" }, "asks for 40, no published limit", true],
  ];
  for (const [name, over, words, hasRoom] of cases) {
    it(name, () => {
      const now = plannedNow({ ...arm, ...over }, "s1:a1");
      expect(now && [plannedNowInWords(now), now.hasRoom]).toEqual([words, hasRoom]);
    });
  }

  it("is nothing for a session that is not planned, or plans no throws", () => {
    expect(plannedNow(arm, "s2:a1")).toBeNull();
    expect(plannedNow({ ...arm, planned: [{ ...arm.planned[0], pitches: 0 } as never] }, "s1:a1")).toBeNull();
  });
});

describe("a refused time as it is said", () => {
  const answers = armAnswers(
    new Map([
      ["a1", { ...arm, planned: [] }],
      ["a2", { ...arm, pain }],
    ]),
  );
  const about = { day: "2026-11-27", noticeMin: 120, answers };
  const resting = {
    reason: "arm_resting",
    status: "resting",
    firstFreeDay: "2026-11-29",
    dryWorkFits: true,
  } as const;
  const cases: [string, Parameters<typeof timeRefusalDetail>[0], object][] = [
    ["notice", { reason: "too_soon_notice", earliestMs: 1 }, { reason: "too_soon", noticeMin: 120 }],
    ["closed", { reason: "site_closed", siteId: "s" }, { reason: "site_closed", day: "2026-11-27" }],
    ["hours", { reason: "outside_coach_hours", coachId: "c" }, { reason: "outside_coach_hours" }],
    ["no lane", { reason: "no_lane", laneId: "l", freeLaneIds: [] }, { reason: "no_lane" }],
    ["coach", { reason: "coach_taken", coachId: "c" }, { reason: "time_taken", what: "coach" }],
    ["lane", { reason: "lane_taken", laneId: "l", freeLaneIds: [] }, { reason: "time_taken", what: "lane" }],
    ["athlete", { reason: "athlete_taken", athleteId: "a1" }, { reason: "time_taken", what: "athlete" }],
    [
      "second adult",
      { reason: "second_adult_taken", personId: "p" },
      { reason: "time_taken", what: "second_adult" },
    ],
    [
      "nobody watches",
      { reason: "second_adult_missing", athleteId: "a1", why: "nobody_named" },
      { reason: "second_adult_missing" },
    ],
    [
      "rest, whose free day stands in the refusal and not in its why",
      { ...resting, athleteId: "a1" },
      {
        reason: "arm_resting",
        firstFreeDay: "2026-11-29",
        dryWorkFits: true,
        why: "51 on Wed 25 Nov asks for three days of rest; to Sat 28 Nov at least.",
      },
    ],
    ["pain", { ...resting, status: "pain", athleteId: "a2" }, { reason: "pain_stop", since: "2026-11-24" }],
  ];
  for (const [name, refusal, detail] of cases) {
    it(name, () => expect(timeRefusalDetail(refusal, about)).toEqual(detail));
  }

  it("too many pitches, with why the number is what it is", () => {
    const day = "2026-11-29";
    const refusal = { reason: "too_many_pitches", athleteId: "a1", atMost: 85 } as const;
    expect(timeRefusalDetail(refusal, { ...about, day })).toEqual({
      reason: "too_many_pitches",
      atMost: 85,
      why: "The book's number for a day at age 12 is 85.",
    });
  });

  it("an arm nobody asked about is the caller's fault", () => {
    expect(() => answers.on("a3", "2026-11-27")).toThrow(RangeError);
  });
});

describe("how far ahead one may book", () => {
  const settings = { bookingNoticeMin: 120, bookingHorizonDays: 60 };
  const nowMs = instantOf("2026-11-25", 900, ZONE);

  it("is the academy's for families and nearly open for staff", () => {
    expect(bookingLimits(settings, false)).toEqual({ noticeMin: 120, horizonDays: 60 });
    expect(bookingLimits(settings, true)).toEqual({ noticeMin: 0, horizonDays: STAFF_HORIZON_DAYS });
  });

  it("ends with the last day of the horizon by the site's calendar", () => {
    const limits = bookingLimits(settings, false);
    expect(isTooFarAhead(instantOf("2027-01-24", 1439, ZONE), limits, nowMs, ZONE)).toBe(false);
    expect(isTooFarAhead(instantOf("2027-01-25", 0, ZONE), limits, nowMs, ZONE)).toBe(true);
  });
});

describe("the days of a follow-up", () => {
  it("run to the end of the academy's span, and on from today once that has passed", () => {
    const facts = { settledOn: "2026-11-20", followUpDays: 14 };
    expect(followUpWindow({ ...facts, today: "2026-11-25" })).toEqual({
      fromDay: "2026-11-25",
      toDay: "2026-12-04",
      isLate: false,
    });
    expect(followUpWindow({ ...facts, today: "2026-12-04" }).isLate).toBe(false);
    expect(followUpWindow({ ...facts, today: "2026-12-05" })).toEqual({
      fromDay: "2026-12-05",
      toDay: "2026-12-18",
      isLate: true,
    });
  });
});

describe("a notice about a session", () => {
  it("says what happened in the subject, and the zone and the rest in the body", () => {
    const told = {
      kind: "bullpen",
      startsAtMs: instantOf("2026-12-01", 1020, ZONE),
      zone: ZONE,
      siteName: "North site",
      laneName: "Lane 2",
      coachName: "Cole Rivers",
    } as const;
    expect(sessionNotice("session_booked", "Kit", told, ["40 pitches planned.", "  "])).toEqual({
      kind: "session_booked",
      subject: "Kit: booked Tue 1 Dec 17:00",
      body: "Bullpen, Tue 1 Dec 17:00 (America/New_York), North site, Lane 2, with Cole Rivers.\n40 pitches planned.",
    });
  });
});
