import { type DayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import { rangeForAge } from "./age-ranges";
import { causesOf, pitchedLoad } from "./arm-view";
import type { DayLoad } from "./day-load";
import type { RuleOf } from "./rule";
import { type Asked, type DatedRule, type Hold, holdsOn } from "./rule-hold";
import { isGameLike } from "./throw-entry";

/**
 * Pitching on this day would join days before and after it into more in a row than the rule allows. The rule has to be
 * in force on the last of them. Every day with counted pitches is taken for an appearance (the cautious reading).
 */
export function daysInARowHolds(
  dated: DatedRule<RuleOf<"days_in_a_row">>,
  { view, day }: Asked,
  holds: Hold[],
): void {
  const { maxDays } = dated.rule;
  const runFrom = (direction: 1 | -1) => {
    const run: DayLoad[] = [];
    for (let away = 1; away <= maxDays; away += 1) {
      const load = pitchedLoad(view, day + direction * away);
      if (!load) break;
      run.push(load);
    }
    return run;
  };
  const before = runFrom(-1);
  const after = runFrom(1);
  if (before.length + after.length < maxDays) return;
  const firstLast = day - before.length + maxDays;
  if (!isInForceWithin(dated, Math.max(day, firstLast), day + after.length)) return;
  const row = [...before.toReversed(), ...after];
  const days = () => row.map((load) => load.day);
  const reason = () => ({ kind: "days_in_a_row", days: days(), maxDays, ...causesOf(row) }) as const;
  holds.push({ on: "rest", freeOn: 0, reason });
}

function isInForceWithin({ from, until }: DatedRule, first: DayNumber, last: DayNumber): boolean {
  return from <= last && first < until;
}

/** No second game on a day that holds one: holds the number only where a game is asked for. */
export function oneGameHolds(
  dated: DatedRule<RuleOf<"one_game_a_day">>,
  { view, day }: Asked,
  holds: Hold[],
): void {
  const load = view.loads.get(day);
  if (!load || load.games === 0 || !holdsOn(dated, day)) return;
  const reason = () => ({ kind: "one_game", ...causesOf([load]) }) as const;
  if (view.kind !== null && isGameLike(view.kind)) {
    holds.push({ on: "pitches", most: 0, saidWhenBinding: false, reason });
  } else holds.push({ on: "note", reason });
}

/**
 * Enough innings caught bar all pitching that day; enough pitches in games bar catching for the rest of it, fewer where
 * there was catching. A count reached while a batter stood in, begun below it, bars nothing. The order of the day is not
 * known: any catching is taken to have come first.
 */
export function catchingHolds(
  dated: DatedRule<RuleOf<"catching">>,
  { view, ageAt, day }: Asked,
  holds: Hold[],
): void {
  const load = view.loads.get(day);
  if (!load || !holdsOn(dated, day)) return;
  const { inningsThatBarPitching, pitchesThatBarCatching, afterCatching } = dated.rule;
  const { inningsCaught, gamePitches, pitchesAtLastBatter } = load;
  if (inningsThatBarPitching !== null && inningsCaught >= inningsThatBarPitching) {
    const reason = () => ({ kind: "caught", innings: inningsCaught, ...causesOf([load]) }) as const;
    holds.push({ on: "rest", freeOn: day + 1, reason });
  }
  const afterCount =
    inningsCaught > 0 ? rangeForAge(afterCatching, ageAt(day))?.pitchesThatBarCatching : null;
  const bars = Math.min(
    pitchesThatBarCatching ?? Number.POSITIVE_INFINITY,
    afterCount ?? Number.POSITIVE_INFINITY,
  );
  const isFinishing = pitchesAtLastBatter !== null && pitchesAtLastBatter < bars - 1;
  if (gamePitches < bars || isFinishing) return;
  const reason = () => ({ kind: "no_catching", pitches: gamePitches, ...causesOf([load]) }) as const;
  holds.push({ on: "note", reason });
}

/** The day a hold ends, in words of the calendar; null where it does not say. */
export function freeDayOf(freeOn: DayNumber) {
  return freeOn === 0 ? null : dayOfNumber(freeOn);
}
