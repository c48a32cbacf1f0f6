import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import type { Rule } from "@/server/domain/throwing/rule";
import type { RuleBook } from "@/server/domain/throwing/rule-book";

/**
 * Every kind of rule read literally, apart from the product: its own calendar, its own ages, no look ahead. A throw is
 * written down on the day in question and every rule of a book is walked, day by day, for a breach that the day is part
 * of. Books say nothing on a day whose age none of their counts and innings covers.
 */
export interface Supposed {
  pitches: number;
  outs: number;
}

/** Whether a book would be broken, on or because of the day, with this much more on it; null where it says nothing. */
export function brokenByHand(question: ArmQuestion, book: RuleBook, more: Supposed): boolean | null {
  const day = numberOf(question.day);
  const limits = book.rules.filter((rule) => rule.level === "limit");
  const age = (on: number) => ageByHand(book, question.bornOn, on);
  const isCovered = limits.some(
    (rule) =>
      (rule.kind === "pitch_count" || rule.kind === "innings") &&
      holds(rule, day) &&
      rule.ageBands.some((band) => band.ageMin <= age(day) && age(day) <= band.ageMax),
  );
  if (!isCovered) return null;
  const walk = { log: logOf(question, more), day, age, asksForGame: question.kind === "game" };
  return limits.some((rule) => isBroken(rule, walk));
}

interface DayByHand {
  pitches: number;
  walks: number;
  /** Null unless one row alone was thrown on the day. */
  lastBatter: number | null;
  rows: number;
  outs: number;
  begun: number;
  caught: number;
  games: number;
}

interface Walk {
  log: Map<number, DayByHand>;
  day: number;
  age: (on: number) => number;
  asksForGame: boolean;
}

function isBroken(rule: Rule, walk: Walk): boolean {
  switch (rule.kind) {
    case "pitch_count":
      return days(walk).some((on) => isCountBroken(rule, walk, on));
    case "innings":
      return days(walk).some((on) => isInningsBroken(rule, walk, on));
    case "days_in_a_row":
      return spansOf(walk.day, rule.maxDays + 1).some(
        (span) => span.every((on) => pitches(walk, on)) && holds(rule, span.at(-1) ?? 0),
      );
    case "one_game_a_day":
      return walk.asksForGame && holds(rule, walk.day) && (walk.log.get(walk.day)?.games ?? 0) > 0;
    case "catching": {
      const bar = rule.inningsThatBarPitching;
      return bar !== null && holds(rule, walk.day) && (walk.log.get(walk.day)?.caught ?? 0) >= bar;
    }
    case "total":
      return days(walk).some((on) => isTotalBroken(rule, walk, on));
    case "months_off":
      return false;
  }
}

function isCountBroken(rule: Extract<Rule, { kind: "pitch_count" }>, walk: Walk, on: number): boolean {
  const band = bandOn(rule, rule.ageBands, walk, on);
  const thrown = walk.log.get(on);
  if (!band || !thrown) return false;
  const walked = thrown.walks * rule.intentionalWalkPitches;
  const total = thrown.pitches + walked;
  if (on === walk.day && total > band.dailyMaxPitches) return true;
  const fromLast = rule.restCountsFrom === "start_of_last_batter" && thrown.lastBatter !== null;
  const counted = fromLast ? (thrown.lastBatter ?? 0) + walked : total;
  const restDays = band.restBands.findLast((rest) => counted >= rest.minPitches)?.restDays ?? 0;
  const rests = Array.from({ length: restDays }, (_, index) => on + index + 1);
  return rests.some((rest) => pitches(walk, rest) && [on, rest].includes(walk.day));
}

function isInningsBroken(rule: Extract<Rule, { kind: "innings" }>, walk: Walk, on: number): boolean {
  const band = bandOn(rule, rule.ageBands, walk, on);
  if (!band || !pitches(walk, on)) return false;
  const got = outsOn(rule, walk, on);
  if (on === walk.day && got > band.outsPerDay) return true;
  const isLong = rule.outsWithoutRest !== null && got > rule.outsWithoutRest;
  const isNextPitched = pitches(walk, on + 1);
  if (isLong && isNextPitched && [on, on + 1].includes(walk.day)) return true;
  return isSpanBroken(rule, walk, on, isNextPitched);
}

function isSpanBroken(
  rule: Extract<Rule, { kind: "innings" }>,
  walk: Walk,
  on: number,
  isNextPitched: boolean,
): boolean {
  if (!rule.rolling) return false;
  const span = Array.from({ length: rule.rolling.days }, (_, back) => on - back);
  const sum = span.reduce((outs, day) => outs + outsOn(rule, walk, day), 0);
  if (sum > rule.rolling.outs) return span.includes(walk.day) || isFullBeforeNext();
  return isFullBeforeNext();

  function isFullBeforeNext(): boolean {
    const isFull = rule.rolling?.restWhenFull === true && sum >= rule.rolling.outs;
    return isFull && isNextPitched && [on + 1, ...span].includes(walk.day);
  }
}

function outsOn(rule: Extract<Rule, { kind: "innings" }>, { log }: Walk, day: number): number {
  const of = log.get(day);
  return rule.counted === "outs" ? (of?.outs ?? 0) : (of?.begun ?? 0) * 3;
}

function isTotalBroken(rule: Extract<Rule, { kind: "total" }>, walk: Walk, on: number): boolean {
  const band = bandOn(rule, rule.ageBands, walk, on);
  if (!band || !pitches(walk, on)) return false;
  const after = "days" in rule.over ? on - rule.over.days : monthsEarlier(on, rule.over.months);
  if (walk.day <= after || walk.day > on) return false;
  let sum = 0;
  for (const [day, of] of walk.log)
    if (after < day && day <= on) sum += rule.unit === "pitches" ? of.pitches : of.outs;
  return sum > band.most;
}

function bandOn<Band extends { ageMin: number; ageMax: number }>(
  rule: Rule,
  bands: readonly Band[],
  { age }: Walk,
  on: number,
): Band | undefined {
  if (!holds(rule, on)) return undefined;
  return bands.find((band) => band.ageMin <= age(on) && age(on) <= band.ageMax);
}

const days = ({ log }: Walk) => [...log.keys()];

function pitches({ log }: Walk, on: number): boolean {
  const of = log.get(on);
  return of !== undefined && (of.pitches > 0 || of.outs > 0);
}

/** Every span of so many days in a row that holds the day. */
function spansOf(day: number, length: number): number[][] {
  return Array.from({ length }, (_, back) => Array.from({ length }, (_each, ahead) => day - back + ahead));
}

function holds(rule: Rule, on: number): boolean {
  const isOver = rule.effectiveUntil !== null && numberOf(rule.effectiveUntil) <= on;
  return numberOf(rule.effectiveFrom) <= on && !isOver;
}

const GAMES = ["game", "live_at_bats", "showcase"];

/** What counts of a question, with the supposed throw written down as one more row of mound work that got some outs. */
function logOf(question: ArmQuestion, more: Supposed): Map<number, DayByHand> {
  const log = new Map<number, DayByHand>();
  const counts = (kind: string) =>
    GAMES.includes(kind) || question.reading.countedKinds.some((each) => each === kind);
  const corrected = new Set(question.entries.map((row) => row.replacesId));
  for (const row of question.entries.filter(({ id, kind }) => counts(kind) && !corrected.has(id))) {
    const { pitches: thrown, intentionalWalks: walks, pitchesAtLastBatter: lastBatter } = row;
    const outs = row.outs ?? 0;
    const begun = GAMES.includes(row.kind) ? Math.max(1, Math.ceil(outs / 3)) : 0;
    const games = GAMES.includes(row.kind) ? 1 : 0;
    const caught = row.inningsCaught ?? 0;
    write(log, row.thrownOn, { pitches: thrown, outs, walks, lastBatter, caught, begun, games });
  }
  for (const { plannedOn, kind, pitches: planned } of question.planned.filter((row) => counts(row.kind))) {
    // The outs of a plan are not known: it begins no inning that could be counted.
    const games = GAMES.includes(kind) ? 1 : 0;
    write(log, plannedOn, { ...NOTHING, pitches: planned, games });
  }
  write(log, question.day, { ...NOTHING, ...more, begun: Math.ceil(more.outs / 3) });
  return log;
}

const NOTHING = { pitches: 0, outs: 0, walks: 0, lastBatter: null, caught: 0, begun: 0, games: 0 };

function write(log: Map<number, DayByHand>, day: string, row: Omit<DayByHand, "rows">): void {
  const on = numberOf(day);
  const of = log.get(on) ?? { ...NOTHING, rows: 0 };
  log.set(on, of);
  of.caught += row.caught;
  if (row.pitches === 0 && row.outs === 0) return;
  of.rows += 1;
  of.pitches += row.pitches;
  of.walks += row.walks;
  of.outs += row.outs;
  of.lastBatter = of.rows === 1 ? row.lastBatter : null;
  of.games += row.games;
  of.begun += row.begun;
}

function ageByHand(book: RuleBook, bornOn: string, on: number): number {
  const [bornYear = 0, bornMonth = 0, bornDay = 0] = bornOn.split("-").map(Number);
  const [year = 0, month = 0, date = 0] = textOf(on).split("-").map(Number);
  if (book.ageBasis.kind === "on_day") {
    return year - bornYear - (month * 100 + date < bornMonth * 100 + bornDay ? 1 : 0);
  }
  const [cutMonth = 0, cutDay = 0] = book.ageBasis.cutOff.split("-").map(Number);
  const asOf = year + book.ageBasis.yearOffset;
  return asOf - bornYear - (cutMonth * 100 + cutDay < bornMonth * 100 + bornDay ? 1 : 0);
}

function monthsEarlier(on: number, months: number): number {
  const [year = 0, month = 1, date = 1] = textOf(on).split("-").map(Number);
  const lastOfMonth = new Date(Date.UTC(year, month - months, 0)).getUTCDate();
  return Math.round(Date.UTC(year, month - 1 - months, Math.min(date, lastOfMonth)) / 86_400_000);
}

const NUMBERS = new Map<string, number>();

function numberOf(day: string): number {
  const known = NUMBERS.get(day) ?? Math.round(Date.parse(`${day}T00:00:00Z`) / 86_400_000);
  NUMBERS.set(day, known);
  return known;
}

function textOf(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}
