import { z } from "zod";
import { painRecord } from "@/server/data/pain";
import { isOfAge } from "@/server/domain/people/person";
import { mayClear, PAIN_KINDS, painStop } from "@/server/domain/throwing/pain";
import { ageOn } from "@/server/domain/time/calendar-day";
import type { Scope } from "./context";

/** The stop an arm is under and all that was said of pain. */
export const painAnswer = z.strictObject({
  stop: z
    .strictObject({ kind: z.enum(PAIN_KINDS), firstFeltOn: z.string(), lastFeltOn: z.string() })
    .nullable(),
  /** Whether the caller may clear it. */
  mayClear: z.boolean(),
  clearedBy: z.enum(["guardian", "athlete"]),
  reports: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.enum(PAIN_KINDS),
      feltOn: z.string(),
      reportedAtMs: z.number(),
      note: z.string(),
      byName: z.string(),
    }),
  ),
  clearances: z.array(
    z.strictObject({
      id: z.string(),
      symptomFreeSince: z.string(),
      clearedAtMs: z.number(),
      examinedBy: z.string(),
      byName: z.string(),
    }),
  ),
});

/** Reads the pain record of the athlete in hand, for this caller. */
export async function painFor(scope: Scope): Promise<z.output<typeof painAnswer>> {
  const { db, athlete } = scope;
  const { reports, clearances } = await painRecord(db, athlete.athleteId);
  const stop = painStop({ reports, clearances });
  return {
    stop: stop && { kind: stop.kind, firstFeltOn: stop.firstFeltOn, lastFeltOn: stop.lastFeltOn },
    mayClear: callerMayClear(scope),
    clearedBy: isOfAge(athlete.bornOn, scope.today) ? "athlete" : "guardian",
    reports,
    clearances,
  };
}

/** Whether one of the things the caller is to the athlete lets them clear pain. */
function callerMayClear({ relations, athlete, today }: Scope): boolean {
  const ageYears = ageOn(athlete.bornOn, today);
  return [...relations].some((relation) => mayClear({ relation, ageYears }));
}
