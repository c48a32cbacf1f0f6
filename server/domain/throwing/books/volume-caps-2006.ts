import type { RuleOf } from "../rule";
import type { RuleBook } from "../rule-book";

const POSITION = "USA Baseball, numbers of pitches for youth pitchers by week, season and year, 2006";

const CAPS = [
  { ageMin: 9, ageMax: 10, week: 75, year: 2000 },
  { ageMin: 11, ageMax: 12, week: 100, year: 3000 },
  { ageMin: 13, ageMax: 14, week: 125, year: 3000 },
];

function cap(over: RuleOf<"total">["over"], mostOf: (row: (typeof CAPS)[number]) => number): RuleOf<"total"> {
  return {
    ...{ kind: "total", level: "advice", source: POSITION, unit: "pitches", over },
    ...{ effectiveFrom: "2006-01-01", effectiveUntil: null },
    ageBands: CAPS.map(({ ageMin, ageMax, ...row }) => ({
      ageMin,
      ageMax,
      most: mostOf({ ageMin, ageMax, ...row }),
    })),
  };
}

/**
 * Numbers of pitches for a week and a year, since replaced by the guideline that counts by the day.
 * They only advise.
 */
export const VOLUME_CAPS_2006: RuleBook = {
  id: "volume-caps-2006",
  name: "Pitches a week and a year, 2006 (no longer in force)",
  source: POSITION,
  standing: "opinion",
  sampleYear: null,
  ageBasis: { kind: "on_day" },
  rules: [cap({ days: 7 }, (row) => row.week), cap({ months: 12 }, (row) => row.year)],
  advice: [
    { ageMin: 9, ageMax: 14, source: POSITION, words: "At most 1,000 pitches in games over a season." },
  ],
  notes: [
    "Replaced by the guideline of MLB and USA Baseball, which counts by the day and asks for rest: kept for who wants to compare.",
    "A season has no length here: its number is said, and not counted.",
  ],
};
