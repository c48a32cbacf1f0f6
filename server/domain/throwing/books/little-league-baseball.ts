import type { RuleBook } from "../rule-book";
import { ages } from "./count-bands";

const REGULATION = "Little League Baseball, Official Regulations and Playing Rules, Regulation VI (pitchers)";

/* The copies of the regulation that were read carry no date: the first season of these rests is from memory. */
const SINCE = {
  level: "limit",
  effectiveFrom: "2010-01-01",
  effectiveUntil: null,
  source: REGULATION,
} as const;

/**
 * Regulation VI for the regular season, league ages 7 to 16. A rest is the full calendar days after the game.
 * The cut-off of the league age (31 August of the year) is from memory.
 */
export const LITTLE_LEAGUE_BASEBALL: RuleBook = {
  id: "little-league-baseball",
  name: "Little League Baseball, Regulation VI",
  source: REGULATION,
  standing: "published",
  sampleYear: null,
  ageBasis: { kind: "league_age", cutOff: "08-31", yearOffset: 0 },
  rules: [
    {
      ...{ kind: "pitch_count", ...SINCE },
      ageBands: [
        ages(7, 8, 20, 35, 50),
        ages(9, 10, 20, 35, 50, 65, 75),
        ages(11, 12, 20, 35, 50, 65, 85),
        ages(13, 14, 20, 35, 50, 65, 95),
        ages(15, 16, 30, 45, 60, 75, 95),
      ],
      ...{ restCountsFrom: "start_of_last_batter", finishesBatter: true, intentionalWalkPitches: 4 },
    },
    { kind: "days_in_a_row", ...SINCE, maxDays: 2 },
    { kind: "one_game_a_day", ...SINCE },
    {
      ...{ kind: "catching", ...SINCE, inningsThatBarPitching: 4, pitchesThatBarCatching: 41 },
      afterCatching: [
        { ageMin: 7, ageMax: 14, pitchesThatBarCatching: 21 },
        { ageMin: 15, ageMax: 16, pitchesThatBarCatching: 31 },
      ],
    },
  ],
  advice: [
    {
      ...{ ageMin: 7, ageMax: 12, source: REGULATION },
      words: "Once taken off the mound, do not go back to pitch in that game.",
    },
    {
      ageMin: 12,
      ageMax: 12,
      source: REGULATION,
      words: "At league age 12, no pitching in the Minor division.",
    },
    {
      ...{ ageMin: 7, ageMax: 16, source: REGULATION },
      words:
        "Pitches of a tied or suspended game are charged; it goes on another day only with the rest observed.",
    },
  ],
  notes: [
    "One league's page says 40 or more pitches end catching for the day; the regulation and every other page read say 41 or more, as here.",
    "A number of 105 for league ages 17 and 18 belongs to a division that is no longer played: this book ends at 16.",
    "That the league age is the age on 31 August of the year, and that these rests began with the 2010 season, is from memory: ask the league.",
    "The regulation counts pitches in games. Whether bullpens and lessons on a mound count as well is the academy's reading.",
  ],
};
