import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ArmQuestion, firstDayWithRoom, pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { MOUND_WORK_KINDS, THROW_KINDS, type ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { addDays } from "@/server/domain/time/calendar-day";
import { ask, entry, plan } from "./arm-question";
import { breachesOn, firstFreeByHand, mostByHand, type Pitched } from "./walked-by-hand";

/** Days around which histories are drawn: anywhere in four years, and often where the calendar is odd. */
const anyDay = fc.oneof(
  fc.integer({ min: 0, max: 1460 }).map((days) => addDays("2025-06-01", days)),
  fc.constantFrom("2026-03-08", "2026-11-01", "2026-12-31", "2028-02-29", "2027-02-28", "2028-03-12"),
);

/** Birth dates for ages 6 to 23 on the day, the birthday often within the week around it. */
const birthBefore = (day: string) =>
  fc
    .tuple(
      fc.integer({ min: 6, max: 23 }),
      fc.oneof(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -360, max: 0 })),
    )
    .map(([years, days]) =>
      addDays(`${Number(day.slice(0, 4)) - years}${day.slice(4).replace("02-29", "02-28")}`, days),
    );

const someThrows = (day: string, from: number, to: number) =>
  fc
    .tuple(
      fc.integer({ min: from, max: to }),
      fc.oneof(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 130 })),
      fc.constantFrom(...THROW_KINDS),
    )
    .map(([offset, pitches, kind]) => [addDays(day, offset), pitches, kind] as const);

/** A log with corrections (some of corrections), plans on both sides of the day, and any reading. */
const anyQuestion: fc.Arbitrary<ArmQuestion> = anyDay.chain((day) =>
  fc
    .record({
      bornOn: birthBefore(day),
      thrown: fc.array(someThrows(day, -9, 1), { maxLength: 7 }),
      corrected: fc.array(fc.tuple(fc.nat(), someThrows(day, -9, 0)), { maxLength: 2 }),
      planned: fc.array(someThrows(day, -3, 9), { maxLength: 5 }),
      countedKinds: fc.subarray([...MOUND_WORK_KINDS]),
    })
    .map(({ bornOn, thrown, corrected, planned, countedKinds }) => {
      const entries: ThrowEntry[] = thrown.map((throws, index) =>
        entry([...throws], { id: `entry ${index}` }),
      );
      corrected.forEach(([pick, throws], index) => {
        const open = entries.filter((row) => !entries.some((later) => later.replacesId === row.id));
        const replaced = open[pick % Math.max(1, open.length)];
        if (replaced)
          entries.push(entry([...throws], { id: `correction ${index}`, replacesId: replaced.id }));
      });
      const plans = planned.map((throws, index) => ({ ...plan([...throws]), id: `plan ${index}` }));
      return { ...ask(day, { bornOn, entries, reading: { countedKinds, askAfterDays: 7 } }), planned: plans };
    }),
);

/** What of a question the book counts, sorted out literally and apart from the product. */
function countedByHand({ entries, planned, reading }: ArmQuestion): Pitched[] {
  const counted = ["game", "live_at_bats", "showcase", ...reading.countedKinds];
  const standing = entries.filter((row) => entries.every((later) => later.replacesId !== row.id));
  return [
    ...standing.map((row) => ({ day: row.thrownOn, pitches: row.pitches, kind: row.kind })),
    ...planned.map((throws) => ({ day: throws.plannedOn, pitches: throws.pitches, kind: throws.kind })),
  ].filter(({ kind }) => counted.includes(kind));
}

const atMost = (question: ArmQuestion) => pitchesAllowed(question).pitches;

describe("laws of the limit", () => {
  it("agrees on 2,000 random histories with the rules walked by hand, day by day and pitch by pitch", () => {
    const met = { free: 0, resting: 0, no_limit: 0 };
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const log = countedByHand(question);
        const answer = pitchesAllowed(question);
        expect(answer.pitches).toBe(mostByHand(question.bornOn, log, question.day));
        if (answer.pitches === 0) {
          expect(answer.firstFreeDay).toBe(firstFreeByHand(question.bornOn, log, question.day));
          met.resting += 1;
        } else {
          expect(answer.firstFreeDay).toBeNull();
          met[answer.pitches === null ? "no_limit" : "free"] += 1;
        }
      }),
      { numRuns: 2000, seed: 20_181 },
    );
    // The histories are worth walking only when each kind of answer came up often.
    expect(Math.min(met.free, met.resting, met.no_limit)).toBeGreaterThan(50);
  });

  it("never allows more when a throw is added, to the log or to the plan, before, on or after the day", () => {
    const added = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: 0, max: 120 }), fc.boolean());
    fc.assert(
      fc.property(anyQuestion, added, (question, [offset, pitches, isPlan]) => {
        const day = addDays(question.day, offset);
        const more = isPlan
          ? { ...question, planned: [...question.planned, { ...plan([day, pitches]), id: "added" }] }
          : { ...question, entries: [...question.entries, entry([day, pitches], { id: "added" })] };
        const before = atMost(question);
        const after = atMost(more);
        if (before === null) expect(after).toBeNull();
        else expect(after).toBeLessThanOrEqual(before);
      }),
      { numRuns: 600 },
    );
  });

  it("never allows more when the academy counts more kinds", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const cautious = {
          ...question,
          reading: { ...question.reading, countedKinds: [...MOUND_WORK_KINDS] },
        };
        const before = atMost(question);
        if (before !== null) expect(atMost(cautious)).toBeLessThanOrEqual(before);
      }),
      { numRuns: 300 },
    );
  });

  it("names a first free day that is free, and none before it that is", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const { firstFreeDay } = pitchesAllowed(question);
        if (!firstFreeDay) return;
        expect(atMost({ ...question, day: firstFreeDay })).toBeGreaterThan(0);
        for (let day = question.day; day < firstFreeDay; day = addDays(day, 1)) {
          expect(atMost({ ...question, day })).toBe(0);
        }
      }),
      { numRuns: 400 },
    );
  });

  it("finds for a number the first day whose answer is at least that number", () => {
    fc.assert(
      fc.property(anyQuestion, fc.integer({ min: 1, max: 60 }), (question, pitches) => {
        const found = firstDayWithRoom(question, pitches);
        if (!found) return;
        expect(atMost({ ...question, day: found })).toBeGreaterThanOrEqual(pitches);
        for (let day = question.day; day < found; day = addDays(day, 1)) {
          expect(atMost({ ...question, day })).toBeLessThan(pitches);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("takes nothing from what is planned: throwing all that is allowed leaves every later plan its rest", () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const pitches = atMost(question);
        if (!pitches) return;
        const entries = [...question.entries, entry([question.day, pitches], { id: "today" })];
        for (const { plannedOn } of question.planned.filter((throws) => throws.plannedOn > question.day)) {
          const { reasons } = pitchesAllowed({ ...question, entries, day: plannedOn });
          const owed = reasons.filter(
            (reason) => reason.kind === "rest_owed" && reason.thrownOn === question.day,
          );
          const counted = countedByHand(question).some(
            (throws) => throws.day === plannedOn && throws.pitches > 0,
          );
          if (counted) expect(owed).toEqual([]);
        }
      }),
      { numRuns: 400 },
    );
  });

  it("plans a season without a breach: whoever takes at most what is left each day breaks no rule on any", () => {
    const season = fc.record({
      start: anyDay,
      outing: fc.tuple(fc.integer({ min: 0, max: 29 }), fc.integer({ min: 1, max: 50 })),
      wishes: fc.array(fc.integer({ min: 0, max: 130 }), { minLength: 30, maxLength: 30 }),
      years: fc.integer({ min: 7, max: 21 }),
      birthdayIn: fc.integer({ min: -330, max: 0 }),
    });
    fc.assert(
      fc.property(season, ({ start, outing, wishes, years, birthdayIn }) => {
        const born = addDays(start, birthdayIn);
        const bornOn = `${Number(born.slice(0, 4)) - years}${born.slice(4).replace("02-29", "02-28")}`;
        const planned = [plan([addDays(start, outing[0]), outing[1]])];
        const entries: ThrowEntry[] = [];
        wishes.forEach((wish, ahead) => {
          const day = addDays(start, ahead);
          const left = atMost({ ...ask(day, { bornOn, entries: [...entries] }), planned }) ?? 0;
          const pitches = Math.min(wish, left);
          if (pitches > 0) entries.push(entry([day, pitches], { id: day }));
        });
        const log = countedByHand({ ...ask(start, { entries }), planned });
        expect(log.filter(({ day }) => breachesOn(bornOn, log, day))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
