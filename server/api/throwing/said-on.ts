import { z } from "zod";
import { armKnownAt } from "@/server/data/arm-known-at";
import { Refusal } from "@/server/domain/errors/refusal";
import { OUTING_HORIZON_DAYS } from "@/server/domain/throwing/planned-outing";
import { addDays, type CalendarDay, instantOf } from "@/server/domain/time/calendar-day";
import { type ArmAnswer, answerFor } from "../arm-answer";
import type { Scope } from "../context";

/** A day that is asked about, and the day at whose end the answer was known. */
export const saidInput = { day: z.iso.date(), knownOn: z.iso.date() };

/**
 * What the books left the arm in hand on a day, from what was on record by the end of another; today's record ends now.
 * @throws Refusal `not_found` for a day before birth, one too far ahead, or a record that is still to come
 */
export async function saidOn(
  { db, athlete, nowMs, today }: Scope,
  { day, knownOn }: { day: CalendarDay; knownOn: CalendarDay },
): Promise<ArmAnswer> {
  const isAskable = day >= athlete.bornOn && day <= addDays(knownOn, OUTING_HORIZON_DAYS);
  if (!isAskable || knownOn > today || knownOn < athlete.bornOn) throw new Refusal({ reason: "not_found" });
  const endMs = instantOf(addDays(knownOn, 1), 0, athlete.zone) - 1;
  const arm = await armKnownAt(db, athlete.athleteId, Math.min(nowMs, endMs));
  return answerFor({ ...arm, day });
}
