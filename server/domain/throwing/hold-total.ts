import { dayOfNumber } from "@/server/domain/time/day-number";
import { rangeForAge } from "./age-ranges";
import { causesOf, loadsBetween, placeAfter, spanStart, totalBetween } from "./arm-view";
import type { RuleOf } from "./rule";
import { type Asked, type DatedRule, type Hold, holdsOn } from "./rule-hold";

/**
 * How a total over days or months holds a day: by the span that ends on it, and by every span that holds it and ends on
 * a later day of pitching. The age and the rule of a span's last day decide.
 */
export function totalHolds(dated: DatedRule<RuleOf<"total">>, asked: Asked, holds: Hold[]): void {
  const { view, day } = asked;
  holdSpan(dated, asked, day, holds);
  for (let place = placeAfter(view, day); place < view.pitchedOn.length; place += 1) {
    const last = view.pitchedOn[place] ?? day;
    if (spanStart(dated.rule.over, last) >= day) return;
    holdSpan(dated, asked, last, holds);
  }
}

function holdSpan(dated: DatedRule<RuleOf<"total">>, asked: Asked, last: number, holds: Hold[]): void {
  const { unit, over, ageBands } = dated.rule;
  const band = holdsOn(dated, last) ? rangeForAge(ageBands, asked.ageAt(last)) : null;
  if (!band) return;
  const after = spanStart(over, last);
  const got = totalBetween(asked.view, unit, after, last);
  const { most } = band;
  holds.push({
    ...{ on: unit, most: Math.max(0, most - got), saidWhenBinding: true },
    reason: () => ({
      ...{ kind: "total", unit, over, most, got, lastDay: dayOfNumber(last) },
      ...causesOf(loadsBetween(asked.view, after, last)),
    }),
  });
}
