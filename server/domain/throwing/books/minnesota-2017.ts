import type { RuleBook } from "../rule-book";
import { ages } from "./count-bands";

const REGULATION =
  "Minnesota State High School League, pitch count regulation for 2017, under NFHS Baseball Rules, rule 6-1-6 (6-2-6 when adopted in July 2016)";

const IN_2017 = {
  level: "limit",
  effectiveFrom: "2017-01-01",
  effectiveUntil: null,
  source: REGULATION,
} as const;

/** A sample of a state's high-school rule of 2017, for the varsity's season. */
export const MINNESOTA_2017: RuleBook = {
  id: "minnesota-high-school-2017",
  name: "Minnesota high school varsity, sample of 2017",
  source: REGULATION,
  standing: "sample",
  sampleYear: 2017,
  ageBasis: { kind: "on_day" },
  rules: [
    {
      ...{ kind: "pitch_count", ...IN_2017, ageBands: [ages(13, 19, 30, 50, 75, 105)] },
      ...{ restCountsFrom: "total", finishesBatter: true, intentionalWalkPitches: 0 },
    },
    { kind: "days_in_a_row", ...IN_2017, maxDays: 2 },
  ],
  advice: [],
  notes: [
    "Figures of 2017 as reported then: the league may have changed them.",
    "The playoffs allowed 115 a day, and teams below the varsity 85 with bands of their own: copy the book for those.",
    "The rule goes by the school's team, not by age: ages 13 to 19 stand in.",
    "Rest is reported as calendar days, not as hours, and only pitches to a batter count.",
  ],
};
