import { type DayNumber, dayOfNumber } from "@/server/domain/time/day-number";
import { type AgeBand, mostPitchesWithRest, restDaysAfter } from "./age-band";
import { rangeForAge } from "./age-ranges";
import { causesOf, pitchedLoad } from "./arm-view";
import type { DayLoad } from "./day-load";
import type { RuleOf } from "./rule";
import { type Asked, type DatedRule, type Hold, holdsOn } from "./rule-hold";

type CountRule = DatedRule<RuleOf<"pitch_count">>;

/**
 * How a pitch count holds a day: rest owed by earlier days, the day's own number, and what the nearest later throwing
 * leaves. The rule and the age on the day of a throw decide its rest: a birthday or a new rule in between changes
 * nothing, and a throw at an age the rule does not cover owes none.
 * @param reachDays the longest rest the rule asks for
 */
export function pitchCountHolds(dated: CountRule, asked: Asked, reachDays: number, holds: Hold[]): void {
  const { view, day } = asked;
  for (let back = 1; back <= reachDays; back += 1) {
    const load = pitchedLoad(view, day - back);
    if (load) holdRest(dated, asked, load, back, holds);
  }
  const band = bandOn(dated, asked, day);
  if (!band) return;
  const today = pitchedLoad(view, day);
  const taken = today ? countOf(dated.rule, today) : 0;
  holdAhead(asked, { band, taken, reachDays }, holds);
  const { dailyMaxPitches } = band;
  const { finishesBatter } = dated.rule;
  holds.push({
    on: "pitches",
    most: Math.max(0, dailyMaxPitches - taken),
    saidWhenBinding: false,
    reason() {
      return { kind: "daily_max", ageYears: asked.ageAt(day), dailyMaxPitches, finishesBatter };
    },
  });
  if (!today) return;
  holds.push({
    on: "taken",
    unit: "pitches",
    reason() {
      return { kind: "already_today", pitches: taken, ...causesOf([today]) };
    },
  });
}

function bandOn(dated: CountRule, { ageAt }: Asked, day: DayNumber): AgeBand | null {
  return holdsOn(dated, day) ? rangeForAge(dated.rule.ageBands, ageAt(day)) : null;
}

function holdRest(dated: CountRule, asked: Asked, load: DayLoad, back: number, holds: Hold[]): void {
  const thrownOn = asked.day - back;
  const band = bandOn(dated, asked, thrownOn);
  if (!band) return;
  const counted = restCountOf(dated.rule, load);
  const restDays = restDaysAfter(band, counted);
  if (restDays < back) return;
  const freeOn = thrownOn + restDays + 1;
  holds.push({
    on: "rest",
    freeOn,
    reason() {
      return {
        ...{ kind: "rest_owed", thrownOn: load.day, pitches: countOf(dated.rule, load), restDays },
        countedPitches: counted,
        freeOn: dayOfNumber(freeOn),
        aboveDailyMax: isAboveDailyMax(dated.rule, load, band),
        ...causesOf([load]),
      };
    },
  });
}

function holdAhead(
  { view, day }: Asked,
  { band, taken, reachDays }: { band: AgeBand; taken: number; reachDays: number },
  holds: Hold[],
): void {
  for (let ahead = 1; ahead <= reachDays; ahead += 1) {
    const outing = pitchedLoad(view, day + ahead);
    if (!outing) continue;
    const totalPitches = mostPitchesWithRest(band, ahead - 1);
    if (totalPitches >= band.dailyMaxPitches) return;
    holds.push({
      on: "pitches",
      most: Math.max(0, totalPitches - taken),
      saidWhenBinding: false,
      reason() {
        return {
          ...{ kind: "outing_ahead", outingOn: outing.day, restDaysBetween: ahead - 1, totalPitches },
          ...causesOf([outing]),
        };
      },
    });
    return;
  }
}

/** The day's count by the rule: pitches, and what it adds for intentional walks. */
function countOf({ intentionalWalkPitches }: RuleOf<"pitch_count">, load: DayLoad): number {
  return load.pitches + load.intentionalWalks * intentionalWalkPitches;
}

/** The count that decides the rest. */
function restCountOf(rule: RuleOf<"pitch_count">, load: DayLoad): number {
  const isExempt = rule.restCountsFrom === "start_of_last_batter" && load.pitchesAtLastBatter !== null;
  if (!isExempt) return countOf(rule, load);
  return (load.pitchesAtLastBatter ?? 0) + load.intentionalWalks * rule.intentionalWalkPitches;
}

function isAboveDailyMax(rule: RuleOf<"pitch_count">, load: DayLoad, { dailyMaxPitches }: AgeBand): boolean {
  if (countOf(rule, load) <= dailyMaxPitches) return false;
  const walked = load.intentionalWalks * rule.intentionalWalkPitches;
  const begunAt =
    load.pitchesAtLastBatter === null ? Number.POSITIVE_INFINITY : load.pitchesAtLastBatter + walked;
  return !(rule.finishesBatter && begunAt < dailyMaxPitches);
}
