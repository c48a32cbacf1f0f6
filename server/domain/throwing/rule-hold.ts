import type { DayNumber } from "@/server/domain/time/day-number";
import type { ArmView } from "./arm-view";
import type { LimitReason } from "./limit-reason";
import type { Rule } from "./rule";

/**
 * How a rule holds an arm on one day. Reasons are made only when they are read: a board asks for numbers alone.
 * - `rest`: nothing, because of other days or of catching; `freeOn` is the first day this one no longer holds, 0 where
 *   that is not for this one to say.
 * - `pitches`, `outs`: at most `most` more; `saidWhenBinding`: its reason is told only where it is the tightest.
 * - `taken`: what of the day itself was taken off.
 * - `note`: holds no number, and has to be said.
 */
export type Hold =
  | { on: "rest"; freeOn: DayNumber; reason: () => LimitReason }
  | { on: "pitches" | "outs"; most: number; saidWhenBinding: boolean; reason: () => LimitReason }
  | { on: "taken"; unit: "pitches" | "outs"; reason: () => LimitReason }
  | { on: "note"; reason: () => LimitReason };

/** A rule with its days as numbers. */
export interface DatedRule<Kind extends Rule = Rule> {
  rule: Kind;
  from: DayNumber;
  until: DayNumber;
}

/** What a rule is asked with: the arm, the age by the rule's book, and the day. */
export interface Asked {
  view: ArmView;
  ageAt: (day: DayNumber) => number;
  day: DayNumber;
}

/** Whether a rule is in force on a day. */
export function holdsOn({ from, until }: DatedRule, day: DayNumber): boolean {
  return from <= day && day < until;
}
