import { loadAcademyTime } from "@/server/data/academy-time";
import { armsOf } from "@/server/data/arms";
import { bookingAthletes, staffNames } from "@/server/data/booking-people";
import { armAnswers } from "@/server/domain/calendar/arm-answers";
import { isTooFarAhead } from "@/server/domain/calendar/booking-limits";
import { checkTime } from "@/server/domain/calendar/check-time";
import { keptSecondAdult, type SecondAdult } from "@/server/domain/calendar/second-adult";
import { sessionEndMs } from "@/server/domain/calendar/session-kind";
import { timeRefusalDetail } from "@/server/domain/calendar/time-refusal-detail";
import { Refusal } from "@/server/domain/errors/refusal";
import { dayOf } from "@/server/domain/time/calendar-day";
import { refuseIfLeft } from "../athlete-leaves";
import type { Scope } from "../context";
import { limitsFor } from "./search-times";
import type { BookInput, MoveInput } from "./session-shapes";

/**
 * Loads what is known around one exact session and refuses it with the first thing that speaks against it.
 * @param exceptSessionId the session that is being moved there, or null
 * @returns when it ends, in epoch milliseconds, and the second adult that is written down
 */
export async function proveTime(
  scope: Scope,
  proposed: Omit<BookInput, "roundId" | "correctionIds"> | MoveInput,
  exceptSessionId: string | null,
): Promise<{ endsAtMs: number; secondAdult: SecondAdult | null }> {
  const { db, nowMs } = scope;
  const { startsAtMs, coachPersonId: coachId, siteId } = proposed;
  const endsAtMs = sessionEndMs(startsAtMs, proposed.durationMin);
  const academy = await loadAcademyTime(db, { fromMs: startsAtMs, toMs: endsAtMs, exceptSessionId });
  const site = academy.names.sites.find(({ id }) => id === siteId);
  if (!site) throw new Refusal({ reason: "not_found" });
  const day = dayOf(startsAtMs, site.zone);
  for (const { athleteId } of proposed.athletes) await refuseIfLeft(scope, athleteId, day);
  const limits = await limitsFor(scope);
  if (isTooFarAhead(startsAtMs, limits, nowMs, site.zone)) {
    throw new Refusal({ reason: "too_far_ahead", horizonDays: limits.horizonDays });
  }
  await assertOnStaff(scope, proposed.secondAdult);
  const planned = new Map(proposed.athletes.map((one) => [one.athleteId, one.plannedPitches]));
  const athletes = await bookingAthletes(db, [...planned.keys()]);
  const answers = armAnswers(await armsOf(db, [...planned.keys()], nowMs, exceptSessionId));
  const [refusal] = checkTime(
    {
      ...proposed,
      coachId,
      athletes: athletes.map((one) => ({ ...one, plannedPitches: planned.get(one.id) ?? 0 })),
    },
    { ...academy, nowMs, noticeMin: limits.noticeMin, roomOn: answers.roomOn },
  );
  if (refusal) {
    const about = { day, noticeMin: limits.noticeMin, answers };
    throw new Refusal(timeRefusalDetail(refusal, about));
  }
  return { endsAtMs, secondAdult: keptSecondAdult(athletes, proposed.secondAdult) };
}

async function assertOnStaff({ db }: Scope, secondAdult: SecondAdult | null): Promise<void> {
  if (secondAdult?.kind !== "staff") return;
  const staff = await staffNames(db);
  if (!staff.some(({ personId }) => personId === secondAdult.personId)) {
    throw new Refusal({ reason: "second_adult_missing" });
  }
}
