import type { DayNumber } from "@/server/domain/time/day-number";
import { rangeForAge } from "./age-ranges";
import { type ArmView, causesOf, pitchedLoad } from "./arm-view";
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
  if (!pitchedLoad(view, day - 1) && !pitchedLoad(view, day + 1)) return;
  const before = runFrom(view, day, -1, maxDays);
  const after = runFrom(view, day, 1, maxDays);
  if (before.length + after.length < maxDays) return;
  const firstLast = day - before.length + maxDays;
  if (!isInForceWithin(dated, Math.max(day, firstLast), day + after.length)) return;
  const row = [...before.toReversed(), ...after];
  holds.push({
    on: "rest",
    freeOn: 0,
    reason: () => ({ kind: "days_in_a_row", days: row.map((load) => load.day), maxDays, ...causesOf(row) }),
  });
}

/** The unbroken run of days of pitching beside a day, nearest first, at most `maxDays` long. */
function runFrom(view: ArmView, day: DayNumber, direction: 1 | -1, maxDays: number): DayLoad[] {
  const run: DayLoad[] = [];
  while (run.length < maxDays) {
    const load = pitchedLoad(view, day + direction * (run.length + 1));
    if (!load) break;
    run.push(load);
  }
  return run;
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
