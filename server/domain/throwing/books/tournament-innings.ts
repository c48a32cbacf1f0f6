import type { RuleBook } from "../rule-book";

const LIMITATIONS =
  "USSSA Baseball, pitching limitations; with the state office's pitching FAQ of November 2016";

/* The year of the FAQ; when the limitations first held is not published. */
const SINCE = {
  level: "limit",
  effectiveFrom: "2016-01-01",
  effectiveUntil: null,
  source: LIMITATIONS,
} as const;

/**
 * Innings of tournament play, as outs, for the divisions up to 12 and to 14: at most 6 (7) innings on one day and 8 over
 * three days; over 3 on one day, or 8 reached, ask for the next day free; never more than three days in a row. A day of
 * rest does not clear the three days.
 */
export const TOURNAMENT_INNINGS: RuleBook = {
  id: "tournament-innings",
  name: "Tournament innings, ages 7 to 14",
  source: LIMITATIONS,
  standing: "published",
  sampleYear: null,
  ageBasis: { kind: "on_day" },
  rules: [
    {
      ...{ kind: "innings", ...SINCE },
      ageBands: [
        { ageMin: 7, ageMax: 12, outsPerDay: 18 },
        { ageMin: 13, ageMax: 14, outsPerDay: 21 },
      ],
      outsWithoutRest: 9,
      rolling: { days: 3, outs: 24, restWhenFull: true },
      counted: "outs",
    },
    { kind: "days_in_a_row", ...SINCE, maxDays: 3 },
  ],
  advice: [],
  notes: [
    "Divisions go by the tournament's own age groups: the age on the day stands in for them.",
    "Innings alone do not bound pitches: one inning can be long.",
  ],
};
