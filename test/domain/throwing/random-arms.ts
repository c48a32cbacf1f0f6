import fc from "fast-check";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import type { Rule } from "@/server/domain/throwing/rule";
import type { RuleBook } from "@/server/domain/throwing/rule-book";
import { SHIPPED_BOOKS } from "@/server/domain/throwing/shipped-books";
import { MOUND_WORK_KINDS, THROW_KINDS, type ThrowEntry } from "@/server/domain/throwing/throw-entry";
import { hasGameDetails } from "@/server/domain/throwing/validate-game";
import { addDays } from "@/server/domain/time/calendar-day";
import { ask, entry, plan } from "./arm-question";

/** Days around which histories are drawn: anywhere in four years, and often where the calendar is odd. */
export const anyDay = fc.oneof(
  fc.integer({ min: 0, max: 1460 }).map((days) => addDays("2025-06-01", days)),
  fc.constantFrom("2026-03-08", "2026-11-01", "2026-12-31", "2028-02-29", "2027-02-28", "2028-03-12"),
);

/** Two rows of ages, 6 to 11 and 12 to 20, so that birthdays and ages outside come up. */
const ages = [
  { ageMin: 6, ageMax: 11 },
  { ageMin: 12, ageMax: 20 },
];

const byAge = <Value>(value: fc.Arbitrary<Value>) =>
  fc
    .tuple(value, value)
    .map((values) => ages.map((range, index) => ({ ...range, ...(values[index] as Value) })));

const countBand = fc
  .array(fc.integer({ min: 5, max: 25 }), { minLength: 1, maxLength: 5 })
  .chain((steps) => fc.tuple(fc.constant(steps), fc.integer({ min: 0, max: 1 })))
  .map(([steps, firstRest]) => {
    let from = 1;
    const restBands = steps.map((step, index) => {
      const band = { minPitches: from, maxPitches: from + step - 1, restDays: firstRest + index };
      from += step;
      return band;
    });
    return { dailyMaxPitches: from - 1, restBands };
  });

const RULES = {
  pitch_count: fc.record({
    kind: fc.constant("pitch_count" as const),
    ageBands: byAge(countBand),
    restCountsFrom: fc.constantFrom("total" as const, "start_of_last_batter" as const),
    finishesBatter: fc.boolean(),
    intentionalWalkPitches: fc.integer({ min: 0, max: 4 }),
  }),
  innings: fc.record({
    kind: fc.constant("innings" as const),
    ageBands: byAge(fc.record({ outsPerDay: fc.integer({ min: 3, max: 21 }) })),
    outsWithoutRest: fc.option(fc.integer({ min: 1, max: 12 })),
    rolling: fc.option(
      fc.record({
        days: fc.integer({ min: 2, max: 6 }),
        outs: fc.integer({ min: 6, max: 30 }),
        restWhenFull: fc.boolean(),
      }),
    ),
    counted: fc.constantFrom("outs" as const, "innings_started" as const),
  }),
  days_in_a_row: fc.record({
    kind: fc.constant("days_in_a_row" as const),
    maxDays: fc.integer({ min: 1, max: 4 }),
  }),
  one_game_a_day: fc.record({ kind: fc.constant("one_game_a_day" as const) }),
  catching: fc.record({
    kind: fc.constant("catching" as const),
    inningsThatBarPitching: fc.option(fc.integer({ min: 1, max: 5 })),
    pitchesThatBarCatching: fc.option(fc.integer({ min: 20, max: 50 })),
    afterCatching: fc.constant([]),
  }),
  total: fc.record({
    kind: fc.constant("total" as const),
    unit: fc.constantFrom("pitches" as const, "outs" as const),
    over: fc.oneof(
      fc.integer({ min: 2, max: 10 }).map((days) => ({ days })),
      fc.integer({ min: 1, max: 2 }).map((months) => ({ months })),
    ),
    ageBands: byAge(fc.record({ most: fc.integer({ min: 10, max: 200 }) })),
  }),
};

/** A rule in force always, from some days before or after the day, or up to such a day. */
const dated = (day: string, rule: fc.Arbitrary<object>): fc.Arbitrary<Rule> =>
  fc
    .tuple(rule, fc.constantFrom("always", "always", "from", "until"), fc.integer({ min: -6, max: 6 }))
    .map(([each, when, away]) => {
      const turn = addDays(day, away);
      return {
        ...{ level: "limit", source: "drawn", ...each },
        effectiveFrom: when === "from" ? turn : "2000-01-01",
        effectiveUntil: when === "until" ? turn : null,
      } as Rule;
    });

const drawnBook = (day: string, id: string): fc.Arbitrary<RuleBook> =>
  fc
    .record({
      first: dated(day, fc.oneof(RULES.pitch_count, RULES.innings)),
      others: fc.array(dated(day, fc.oneof(...Object.values(RULES))), { maxLength: 4 }),
      ageBasis: fc.constantFrom<RuleBook["ageBasis"]>(
        { kind: "on_day" },
        { kind: "league_age", cutOff: "08-31", yearOffset: 0 },
        { kind: "league_age", cutOff: "12-31", yearOffset: -1 },
      ),
    })
    .map(({ first, others, ageBasis }) => ({
      ...{ id, name: id, source: "drawn", standing: "own" as const, sampleYear: null },
      ...{ ageBasis, rules: [first, ...others], advice: [], notes: [] },
    }));

/** One to three books, shipped ones and drawn ones. */
export const anyBooks = (day: string): fc.Arbitrary<ArmQuestion["books"]> => {
  const one = (id: string) =>
    fc.oneof(fc.constantFrom(...SHIPPED_BOOKS), drawnBook(day, id), drawnBook(day, id));
  return fc
    .tuple(one("first"), fc.array(fc.tuple(fc.nat(), one("other")), { maxLength: 2 }))
    .map(([first, others]): ArmQuestion["books"] => [first, ...others.map(([, book]) => book)]);
};

/** Birth dates for ages 5 to 21 on the day, the birthday often within the week around it. */
const birthBefore = (day: string) =>
  fc
    .tuple(
      fc.integer({ min: 6, max: 20 }),
      fc.oneof(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -360, max: 0 })),
    )
    .map(([years, days]) =>
      addDays(`${Number(day.slice(0, 4)) - years}${day.slice(4).replace("02-29", "02-28")}`, days),
    );

const someRow = (from: number, to: number) =>
  fc.record({
    offset: fc.oneof(
      fc.integer({ min: from, max: to }),
      fc.integer({ min: Math.max(from, -4), max: Math.min(to, 4) }),
    ),
    pitches: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 110 })),
    kind: fc.constantFrom(...THROW_KINDS, "game" as const, "game" as const),
    outs: fc.option(fc.integer({ min: 0, max: 15 })),
    inningsCaught: fc.option(fc.integer({ min: 0, max: 6 })),
    lastBatter: fc.option(fc.integer({ min: 0, max: 9 })),
    intentionalWalks: fc.constantFrom(0, 0, 0, 1, 2),
  });

/** A log with games that say all there is, corrections, plans on both sides of the day, any reading, any books. */
export const anyArm: fc.Arbitrary<ArmQuestion> = anyDay.chain((day) =>
  fc
    .record({
      books: anyBooks(day),
      bornOn: birthBefore(day),
      thrown: fc.array(someRow(-40, 1), { maxLength: 9 }),
      planned: fc.array(someRow(-3, 12), { maxLength: 5 }),
      replaces: fc.option(fc.nat(8)),
      countedKinds: fc.subarray([...MOUND_WORK_KINDS]),
      kind: fc.constantFrom("game" as const, null),
    })
    .map(({ books, bornOn, thrown, planned, replaces, countedKinds, kind }) => {
      const entries: ThrowEntry[] = thrown.map((row, index) => {
        const pitchesAtLastBatter =
          row.lastBatter === null ? null : Math.max(0, row.pitches - row.lastBatter);
        const { outs, inningsCaught, intentionalWalks } = row;
        // Only a game says more than its pitches.
        const said = hasGameDetails(row.kind)
          ? { outs, inningsCaught, intentionalWalks, pitchesAtLastBatter }
          : {};
        const isCorrection = replaces !== null && index === thrown.length - 1 && replaces < index;
        const replacesId = isCorrection ? `entry ${replaces}` : null;
        return entry([addDays(day, row.offset), row.pitches, row.kind], {
          ...said,
          id: `entry ${index}`,
          replacesId,
        });
      });
      const plans = planned.map((row, index) => ({
        ...plan([addDays(day, row.offset), row.pitches, row.kind]),
        id: `plan ${index}`,
      }));
      const reading = { countedKinds, askAfterDays: 7 };
      return { ...ask(day, { books, bornOn, entries, reading }), planned: plans, kind };
    }),
);
