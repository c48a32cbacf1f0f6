import type { AgeRange } from "../throwing/age-ranges";
import { inningsInWords } from "../throwing/innings";
import type { Rule, RuleKind, RuleOf } from "../throwing/rule";
import type { AgeBasis, RuleBook, Standing } from "../throwing/rule-book";

/** Above this an age band has no end in words. */
const NO_LAST_AGE = 99;

/** What each kind of rule is called. */
export const RULE_KIND_WORDS: Record<RuleKind, string> = {
  pitch_count: "Pitches in a day and the rest after them",
  innings: "Innings",
  days_in_a_row: "Days in a row",
  one_game_a_day: "One game a day",
  catching: "Pitching and catching on one day",
  total: "Totals over a span",
  months_off: "Months off",
};

/** What a book's standing is called. */
export const STANDING_WORDS: Record<Standing, string> = {
  published: "published rule or guideline",
  sample: "sample of a past year",
  opinion: "opinion",
  own: "the academy's own",
};

/**
 * Ages in words.
 * @example agesInWords(7, 8) // "7 to 8"
 * @example agesInWords(19, 120) // "19 and over"
 */
export function agesInWords(ageMin: number, ageMax: number): string {
  if (ageMax >= NO_LAST_AGE) return ageMin <= 0 ? "all" : `${ageMin} and over`;
  return ageMin === ageMax ? String(ageMin) : `${ageMin} to ${ageMax}`;
}

/**
 * The ages whose pitches or innings a book counts, from the youngest to the oldest; "none" where it counts neither.
 * @example agesCovered(USA_BASEBALL_2018) // "7 to 22"
 */
export function agesCovered(book: Pick<RuleBook, "rules">): string {
  const bands = book.rules.flatMap((rule): readonly AgeRange[] =>
    rule.kind === "pitch_count" || rule.kind === "innings" ? rule.ageBands : [],
  );
  if (bands.length === 0) return "none";
  const youngest = Math.min(...bands.map((band) => band.ageMin));
  return agesInWords(youngest, Math.max(...bands.map((band) => band.ageMax)));
}

/**
 * Outs as innings with the word, three to an inning.
 * @example countedInnings(7) // "2 1/3 innings"
 * @example countedInnings(3) // "1 inning"
 */
export function countedInnings(outs: number): string {
  return `${inningsInWords(outs)} ${outs <= 3 ? "inning" : "innings"}`;
}

/**
 * Which age a book goes by, in a sentence.
 * @example ageBasisInWords({ kind: "on_day" }) // "Age is the completed years on the day."
 */
export function ageBasisInWords(basis: AgeBasis): string {
  if (basis.kind === "on_day") return "Age is the completed years on the day.";
  const [month, day] = basis.cutOff.split("-").map(Number);
  const year = basis.yearOffset === 0 ? "the same year" : "the year before";
  return `Age is the league age: the completed years on ${day} ${MONTHS[(month ?? 1) - 1]} of ${year}.`;
}

/** Months of the calendar, January first. */
export const MONTHS = [
  ...["January", "February", "March", "April", "May", "June", "July"],
  ...["August", "September", "October", "November", "December"],
];

/** What a rule says beside its table, in sentences. A rule without a table says all of itself here. */
export function ruleInSentences(rule: Rule): string[] {
  switch (rule.kind) {
    case "pitch_count":
      return pitchCountSentences(rule);
    case "innings":
      return inningsSentences(rule);
    case "days_in_a_row":
      return [`At most ${counted(rule.maxDays, "day")} in a row with counted pitches.`];
    case "one_game_a_day":
      return ["No pitching in more than one game on a day."];
    case "catching":
      return catchingSentences(rule);
    case "total": {
      const over = "days" in rule.over ? counted(rule.over.days, "day") : counted(rule.over.months, "month");
      return [`Counted over any ${over}, all teams together.`];
    }
    case "months_off":
      return [
        rule.of === "throwing"
          ? "Months of the year without any overhead throwing."
          : "Months of the year without pitching in competition.",
      ];
  }
}

function pitchCountSentences(rule: RuleOf<"pitch_count">): string[] {
  const walks = rule.intentionalWalkPitches;
  return [
    "Rest is counted in full calendar days.",
    rule.restCountsFrom === "total"
      ? "Rest goes by all pitches of the day."
      : "Rest goes by the count at the start of the last batter, where it was written down.",
    ...(rule.finishesBatter ? ["A batter may be finished once the number is reached."] : []),
    walks === 0
      ? "An intentional walk adds no pitches."
      : `An intentional walk adds ${counted(walks, "pitch", "pitches")}.`,
  ];
}

function inningsSentences({ outsWithoutRest, rolling, counted: what }: RuleOf<"innings">): string[] {
  const rest = rolling?.restWhenFull ? ", and once that is reached the next day is for rest" : "";
  return [
    ...(outsWithoutRest === null
      ? []
      : [`More than ${countedInnings(outsWithoutRest)} in a day asks for one day of rest.`]),
    ...(rolling
      ? [`At most ${countedInnings(rolling.outs)} over any ${counted(rolling.days, "day")} in a row${rest}.`]
      : []),
    what === "outs"
      ? "Counted by outs: a third of an inning for each."
      : "One pitch in an inning counts as the whole inning.",
  ];
}

function catchingSentences(rule: RuleOf<"catching">): string[] {
  const { inningsThatBarPitching: innings, pitchesThatBarCatching: pitches } = rule;
  return [
    ...(innings === null
      ? []
      : [`Whoever caught in ${counted(innings, "inning")} or more does not pitch on that day.`]),
    ...(pitches === null
      ? []
      : [`Whoever threw ${pitches} pitches or more does not catch on the rest of that day.`]),
    ...(rule.afterCatching.length > 0
      ? ["After catching and then pitching, this many pitches end catching for the day:"]
      : []),
  ];
}

function counted(number: number, noun: string, nouns = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : nouns}`;
}
