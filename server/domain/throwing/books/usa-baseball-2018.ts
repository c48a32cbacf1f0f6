import type { AgeBand } from "../age-band";
import type { RuleOf } from "../rule";
import type { AdviceLine, RuleBook } from "../rule-book";
import { ages } from "./count-bands";

const GUIDELINES = "MLB and USA Baseball, Pitch Smart pitching guidelines, 2018";
const ANNOUNCEMENT =
  "MLB and USA Baseball, announcement of updates to the Pitch Smart program, for the 2018 season";

const AGE_BANDS: AgeBand[] = [
  ages(7, 8, 20, 35, 50),
  ages(9, 10, 20, 35, 50, 65, 75),
  ages(11, 12, 20, 35, 50, 65, 85),
  ages(13, 14, 20, 35, 50, 65, 95),
  ages(15, 16, 30, 45, 60, 75, 95),
  ages(17, 18, 30, 45, 60, 80, 105),
  ages(19, 22, 30, 45, 60, 80, 105, 120),
];

function advice(ageMin: number, ageMax: number, lines: readonly string[], source = GUIDELINES): AdviceLine[] {
  return lines.map((words) => ({ ageMin, ageMax, words, source }));
}

const ADVICE: AdviceLine[] = [
  ...advice(0, 8, ["At most 60 innings over any twelve months, all teams together."]),
  ...advice(9, 12, ["At most 80 innings over any twelve months, all teams together."]),
  ...advice(13, 18, ["At most 100 innings over any twelve months, all teams together."]),
  ...advice(19, 22, ["There is no number of innings for the year: keep track of them."]),
  ...advice(0, 14, [
    "At least four months of the year without throwing, two to three of them in one stretch.",
  ]),
  ...advice(15, 18, [
    "At least four months of the year without competitive pitching, with two to three months in one stretch without any overhead throwing.",
  ]),
  ...advice(19, 22, [
    "At least three months of the year without competitive pitching, with four weeks or more in one stretch without any overhead throwing.",
  ]),
  ...advice(0, 12, [
    "Fastballs and change-ups only.",
    "Once taken off the mound, do not go back to pitch in that game.",
  ]),
  ...advice(13, 18, [
    "Breaking pitches may begin once the fastball and the change-up are consistent.",
    "Back to the mound at most once a game, and only after staying in it at another position.",
  ]),
  ...advice(0, 22, [
    "Warm up properly before pitching.",
    "Set a pitch count and the rest that goes with it, and keep to both.",
    "Avoid pitching for several teams over the same weeks.",
    "Avoid catching on the days between pitching.",
    "Do not pitch in more than one game a day.",
    "Watch for signs of fatigue other than the count.",
  ]),
  ...advice(0, 22, ["Do not pitch in games on three days in a row, however few the pitches."], ANNOUNCEMENT),
  ...advice(0, 8, ["Let it be about moving well, being fit and having fun."]),
  ...advice(0, 14, ["Play other sports too."]),
  ...advice(15, 22, ["Keep to the guideline across leagues, tournaments and showcases."]),
];

const SINCE_2018 = { effectiveFrom: "2018-01-01", effectiveUntil: null, source: GUIDELINES } as const;

/** Innings of any twelve months, as outs. */
const YEARLY_OUTS: RuleOf<"total">["ageBands"] = [
  { ageMin: 0, ageMax: 8, most: 60 * 3 },
  { ageMin: 9, ageMax: 12, most: 80 * 3 },
  { ageMin: 13, ageMax: 18, most: 100 * 3 },
];

/**
 * The guideline table in force since the 2018 season, ages 7 to 22, with its advice.
 * Source: MLB and USA Baseball, Pitch Smart pitching guidelines; the 17-18 and 19-22 rows and the rule on three days
 * in a row as announced for 2018. The season's first day is not published: 1 January is taken. Rest in full calendar
 * days is how leagues and state associations read a table that itself only says "required rest (days)". Of "two to
 * three months in one stretch" the two are taken; four weeks in one stretch are taken for one month.
 */
export const USA_BASEBALL_2018: RuleBook = {
  id: "usa-baseball-2018",
  name: "MLB and USA Baseball guideline, since 2018",
  source: GUIDELINES,
  standing: "published",
  sampleYear: null,
  ageBasis: { kind: "on_day" },
  rules: [
    {
      ...{ kind: "pitch_count", level: "limit", ...SINCE_2018, ageBands: AGE_BANDS },
      ...{ restCountsFrom: "total", finishesBatter: false, intentionalWalkPitches: 0 },
    },
    { kind: "days_in_a_row", level: "limit", ...SINCE_2018, source: ANNOUNCEMENT, maxDays: 2 },
    { kind: "one_game_a_day", level: "advice", ...SINCE_2018 },
    {
      kind: "total",
      level: "advice",
      ...SINCE_2018,
      unit: "outs",
      over: { months: 12 },
      ageBands: YEARLY_OUTS,
    },
    {
      ...{ kind: "months_off", level: "advice", ...SINCE_2018, of: "throwing" },
      ageBands: [{ ageMin: 0, ageMax: 14, months: 4, runMonths: 2 }],
    },
    {
      ...{ kind: "months_off", level: "advice", ...SINCE_2018, of: "competitive_pitching" },
      ageBands: [
        { ageMin: 15, ageMax: 18, months: 4, runMonths: 2 },
        { ageMin: 19, ageMax: 22, months: 3, runMonths: 1 },
      ],
    },
  ],
  advice: ADVICE,
  notes: [
    "Some pages and many club copies still show the rows of before 2018 for ages 17 to 22: 61 to 75 for three days of rest, 76 and over for four. This book uses the rows announced for 2018.",
    "One page prints 51 to 60 for three days of rest at ages 11 and 12; every other one has 51 to 65, as here.",
    "Often misquoted: this guideline advises against catching on the days between pitching; numbers of innings caught and of pitches that end catching are Little League's. It is three days in a row that it rules out, not two.",
    "The guideline counts pitches in games. Whether bullpens and lessons on a mound count as well is the academy's reading.",
  ],
};
