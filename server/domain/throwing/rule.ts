import { z } from "zod";
import { isCalendarDay } from "@/server/domain/time/calendar-day";
import { ageBandSchema, pitchCount } from "./age-band";
import { type AgeRange, ageFaults, ageYears } from "./age-ranges";

/** Every kind of rule a book can hold, in the order a book is best read. */
export const RULE_KINDS = [
  "pitch_count",
  "innings",
  "days_in_a_row",
  "one_game_a_day",
  "catching",
  "total",
  "months_off",
] as const;

/** One of {@link RULE_KINDS}. */
export type RuleKind = (typeof RULE_KINDS)[number];

/** A limit lowers the number; advice only warns. */
export const RULE_LEVELS = ["limit", "advice"] as const;

const day = z.string().refine(isCalendarDay, "must be a calendar day, YYYY-MM-DD");

const whenAndWhence = {
  level: z.enum(RULE_LEVELS),
  effectiveFrom: day,
  /** The first day on which it no longer holds; null while nobody has ended it. */
  effectiveUntil: day.nullable(),
  source: z.string().min(1).max(500),
};

/** Bounds of a sane book, as for pitches; common practice, no source. */
const outs = z.int().min(1).max(90);
const innings = z.int().min(1).max(20);
const windowDays = z.int().min(2).max(366);

/** Ranges of ages without gap or overlap, youngest first. */
function byAge<Range extends z.ZodType<AgeRange>>(range: Range) {
  return z
    .array(range)
    .min(1)
    .max(40)
    .superRefine((ranges, context) => {
      for (const fault of ageFaults(ranges)) context.addIssue({ code: "custom", ...fault });
    });
}

const ages = { ageMin: ageYears, ageMax: ageYears };

/**
 * Pitches a day by age, and the rest each count asks for.
 * `restCountsFrom`: whether rest goes by the day's total, or by the count at the start of the last batter where the
 * whole day is one outing that says it. `finishesBatter`: a batter begun before the daily number may be finished.
 * `intentionalWalkPitches`: what an announced intentional walk adds to the count, 0 to 4.
 */
export const pitchCountRuleSchema = z.strictObject({
  kind: z.literal("pitch_count"),
  ...whenAndWhence,
  ageBands: byAge(ageBandSchema),
  restCountsFrom: z.enum(["total", "start_of_last_batter"]),
  finishesBatter: z.boolean(),
  intentionalWalkPitches: z.int().min(0).max(4),
});

/**
 * Outs (thirds of an inning) a day by age; more than `outsWithoutRest` on one day ask for the next day free (null: no
 * such rule); `rolling`: at most `outs` over any `days` days in a row, and, `restWhenFull`, none on the day after they
 * are reached. `counted`: outs as they were got, or every inning begun as three of them.
 */
export const inningsRuleSchema = z.strictObject({
  kind: z.literal("innings"),
  ...whenAndWhence,
  ageBands: byAge(z.strictObject({ ...ages, outsPerDay: outs })),
  outsWithoutRest: outs.nullable(),
  rolling: z.strictObject({ days: z.int().min(2).max(30), outs, restWhenFull: z.boolean() }).nullable(),
  counted: z.enum(["outs", "innings_started"]),
});

/** `maxDays` days in a row may hold counted pitches, one more may not. */
export const daysInARowRuleSchema = z.strictObject({
  kind: z.literal("days_in_a_row"),
  ...whenAndWhence,
  maxDays: z.int().min(1).max(7),
});

/** No second game on a day that holds one; a bullpen or a lesson is no game. */
export const oneGameADayRuleSchema = z.strictObject({ kind: z.literal("one_game_a_day"), ...whenAndWhence });

/**
 * Catching and pitching on one day. Whoever caught `inningsThatBarPitching` innings does not pitch that day; whoever
 * threw `pitchesThatBarCatching` in games does not catch any more that day, and by `afterCatching` fewer pitches do
 * where catching came before. Null or no row for the age: no such rule.
 */
export const catchingRuleSchema = z.strictObject({
  kind: z.literal("catching"),
  ...whenAndWhence,
  inningsThatBarPitching: innings.nullable(),
  pitchesThatBarCatching: pitchCount.nullable(),
  afterCatching: z
    .array(z.strictObject({ ...ages, pitchesThatBarCatching: pitchCount }))
    .max(40)
    .superRefine((ranges, context) => {
      for (const fault of ageFaults(ranges)) context.addIssue({ code: "custom", ...fault });
    }),
});

/** At most `most` pitches or outs over any `days` days in a row, or any `months` months. */
export const totalRuleSchema = z.strictObject({
  kind: z.literal("total"),
  ...whenAndWhence,
  unit: z.enum(["pitches", "outs"]),
  over: z.union([z.strictObject({ days: windowDays }), z.strictObject({ months: z.int().min(1).max(12) })]),
  ageBands: byAge(z.strictObject({ ...ages, most: z.int().min(1).max(20_000) })),
});

/**
 * `months` whole calendar months of the last twelve without throwing (or without competitive pitching), `runMonths` of
 * them one after another without any throwing. Always advice: no published book stops an arm by it.
 */
export const monthsOffRuleSchema = z.strictObject({
  kind: z.literal("months_off"),
  ...whenAndWhence,
  level: z.literal("advice"),
  of: z.enum(["throwing", "competitive_pitching"]),
  ageBands: byAge(
    z.strictObject({
      ...ages,
      months: z.int().min(1).max(11),
      runMonths: z.int().min(0).max(11),
    }),
  ),
});

/** One dated rule of a book. */
export const ruleSchema = z
  .discriminatedUnion("kind", [
    pitchCountRuleSchema,
    inningsRuleSchema,
    daysInARowRuleSchema,
    oneGameADayRuleSchema,
    catchingRuleSchema,
    totalRuleSchema,
    monthsOffRuleSchema,
  ])
  .refine((rule) => rule.effectiveUntil === null || rule.effectiveUntil > rule.effectiveFrom, {
    path: ["effectiveUntil"],
    message: "must be later than the day it begins",
  });

/** See {@link ruleSchema}. */
export type Rule = z.infer<typeof ruleSchema>;

/** The rule of one kind. */
export type RuleOf<Kind extends RuleKind> = Extract<Rule, { kind: Kind }>;
