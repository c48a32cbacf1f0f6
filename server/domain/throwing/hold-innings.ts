import { type DayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import { rangeForAge } from "./age-ranges";
import { causesOf, loadsBetween, pitchedLoad, totalBetween } from "./arm-view";
import type { DayLoad } from "./day-load";
import type { LimitReason } from "./limit-reason";
import type { RuleOf } from "./rule";
import { type Asked, type DatedRule, type Hold, holdsOn } from "./rule-hold";

type InningsRule = DatedRule<RuleOf<"innings">>;

/**
 * How an innings rule holds a day: the rest after a long day or a full span, the day's own number, the span it lies in,
 * and what the days after it leave. The outs of throws that are planned are not known: they count as pitching, with none.
 */
export function inningsHolds(dated: InningsRule, asked: Asked, holds: Hold[]): void {
  const { view, day } = asked;
  holdRest(dated, asked, holds);
  holdSpans(dated, asked, holds);
  const band = bandOn(dated, asked, day);
  if (!band) return;
  const today = pitchedLoad(view, day);
  const taken = today ? countOf(dated.rule, today) : 0;
  hold(dated, holds, band.outsPerDay - taken, false, () => ({
    ...{ kind: "daily_outs", ageYears: asked.ageAt(day), outs: band.outsPerDay },
  }));
  if (today && taken > 0) {
    const reason = () => ({ kind: "outs_today", outs: taken, ...causesOf([today]) }) as const;
    holds.push({ on: "taken", unit: "outs", reason });
  }
  holdNextDay(dated, asked, taken, holds);
  holdUnsaid(dated, asked, holds);
}

function bandOn(dated: InningsRule, { ageAt }: Asked, day: DayNumber) {
  return holdsOn(dated, day) ? rangeForAge(dated.rule.ageBands, ageAt(day)) : null;
}

function countOf({ counted }: RuleOf<"innings">, load: DayLoad): number {
  return counted === "outs" ? load.outs : load.inningsBegun * 3;
}

/** The pitching of the span of the rule that ends on `last`; of a rule without spans, of that day alone. */
function spanOf(dated: InningsRule, { view }: Asked, last: DayNumber): DayLoad[] {
  return loadsBetween(view, last - (dated.rule.rolling?.days ?? 1), last);
}

/** The outs of {@link spanOf}. */
function spanTotal({ rule }: InningsRule, { view }: Asked, last: DayNumber): number {
  const after = last - (rule.rolling?.days ?? 1);
  if (rule.counted === "outs") return totalBetween(view, "outs", after, last);
  return totalBetween(view, "inningsBegun", after, last) * 3;
}

/** An inning begun counts whole: what is left of one is none. */
function hold(
  { rule }: InningsRule,
  holds: Hold[],
  left: number,
  saidWhenBinding: boolean,
  reason: () => LimitReason,
): void {
  const whole = rule.counted === "outs" ? left : Math.floor(left / 3) * 3;
  holds.push({ on: "outs", most: Math.max(0, whole), saidWhenBinding, reason });
}

function holdRest(dated: InningsRule, asked: Asked, holds: Hold[]): void {
  const { rule } = dated;
  const before = pitchedLoad(asked.view, asked.day - 1);
  if (!before || !bandOn(dated, asked, asked.day - 1)) return;
  const freeOn = asked.day + 1;
  const said = { kind: "innings_rest", freeOn: dayOfNumber(freeOn) } as const;
  const outs = countOf(rule, before);
  if (rule.outsWithoutRest !== null && outs > rule.outsWithoutRest) {
    const reason = () => ({ ...said, thrownOn: before.day, outs, days: 1, ...causesOf([before]) }) as const;
    holds.push({ on: "rest", freeOn, reason });
  }
  if (!rule.rolling?.restWhenFull) return;
  const { days, outs: most } = rule.rolling;
  const got = spanTotal(dated, asked, asked.day - 1);
  if (got < most) return;
  const causes = () => causesOf(spanOf(dated, asked, asked.day - 1));
  const reason = () => ({ ...said, thrownOn: before.day, outs: got, days, ...causes() }) as const;
  holds.push({ on: "rest", freeOn, reason });
}

/** What pitching on the next day leaves for this one. */
function holdNextDay(dated: InningsRule, asked: Asked, taken: number, holds: Hold[]): void {
  const { outsWithoutRest } = dated.rule;
  const next = pitchedLoad(asked.view, asked.day + 1);
  if (!next || outsWithoutRest === null) return;
  hold(dated, holds, outsWithoutRest - taken, false, () => ({
    ...{ kind: "outs_ahead", outingOn: next.day, totalOuts: outsWithoutRest, ...causesOf([next]) },
  }));
}

/** The spans that hold the day and end on it or on a later day of pitching. */
function holdSpans(dated: InningsRule, asked: Asked, holds: Hold[]): void {
  const { rolling } = dated.rule;
  if (!rolling) return;
  for (let last = asked.day; last < asked.day + rolling.days; last += 1) {
    const isAsked = last === asked.day || pitchedLoad(asked.view, last) !== null;
    if (!isAsked || !bandOn(dated, asked, last)) continue;
    const got = spanTotal(dated, asked, last);
    // The day after a span that is reached rests: one out short of it leaves that day its pitching.
    const keepsNextDay = rolling.restWhenFull && pitchedLoad(asked.view, last + 1) !== null;
    const most = keepsNextDay ? rolling.outs - 1 : rolling.outs;
    hold(dated, holds, most - got, true, () => ({
      ...{
        kind: "rolling_outs",
        days: rolling.days,
        most,
        got,
        lastDay: dayOfNumber(last),
        ...causesOf(spanOf(dated, asked, last)),
      },
    }));
  }
}

/** Games that say no outs: the rule cannot weigh them, and someone should be asked. */
function holdUnsaid(dated: InningsRule, asked: Asked, holds: Hold[]): void {
  const entryIds = spanOf(dated, asked, asked.day).flatMap((load) => load.withoutOutsIds);
  if (entryIds.length === 0) return;
  holds.push({ on: "note", reason: () => ({ kind: "outs_not_said", entryIds, plannedIds: [] }) });
}
