import { z } from "zod";
import { findSettings } from "@/server/data/academy-settings";
import { placeNames } from "@/server/data/academy-time";
import { bookingAthletes, staffNames } from "@/server/data/booking-people";
import { openCorrectionsOf } from "@/server/data/corrections";
import { settledRound } from "@/server/data/follow-ups";
import { followUpWindow } from "@/server/domain/calendar/follow-up";
import { isOfAge } from "@/server/domain/people/person";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";
import { limitsFor } from "./search-times";
import { plannedCorrection } from "./session-shapes";

const person = z.strictObject({ personId: z.string(), name: z.string() });
const named = z.strictObject({ id: z.string(), name: z.string() });

/** What a booking is made from: who, what to confirm, who may watch, where and with whom. */
export const planning = z.strictObject({
  today: z.string(),
  athletes: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      givenName: z.string(),
      isMinor: z.boolean(),
      coachPersonId: z.string().nullable(),
      guardians: z.array(person),
      corrections: z.array(plannedCorrection),
    }),
  ),
  followUp: z
    .strictObject({
      roundId: z.string(),
      coachPersonId: z.string().nullable(),
      fromDay: z.string(),
      toDay: z.string(),
      isLate: z.boolean(),
      isFollowedUp: z.boolean(),
    })
    .nullable(),
  staff: z.array(person),
  coaches: z.array(named),
  sites: z.array(named),
  horizonDays: z.number(),
  noticeMin: z.number(),
});

/** Gathers it. A round's follow-up is for one athlete; of several athletes none is named. */
export async function planningFor(
  scope: Scope,
  input: { athleteIds: readonly string[]; roundId: string | null },
): Promise<z.input<typeof planning>> {
  const { db, today } = scope;
  const { sites, coaches } = await placeNames(db);
  const athletes = [];
  for (const one of await bookingAthletes(db, input.athleteIds)) {
    athletes.push({
      ...{ athleteId: one.id, name: one.name, givenName: one.givenName, coachPersonId: one.coachPersonId },
      ...{ isMinor: !isOfAge(one.bornOn, today), guardians: one.guardians },
      corrections: await toConfirm(scope, one.id),
    });
  }
  return {
    ...{ today, athletes, coaches, staff: await staffNames(db) },
    followUp: input.athleteIds.length === 1 ? await followUpOf(scope, input.roundId) : null,
    sites: sites.map(({ id, name }) => ({ id, name })),
    ...(await limitsFor(scope)),
  };
}

async function toConfirm({ db }: Scope, athleteId: string) {
  const open = await openCorrectionsOf(db, athleteId);
  return open.map(({ id: correctionId, checkpointName, cue, drill, standing }) => ({
    ...{ correctionId, checkpointName, cue, drill, state: standing.state, isPlanned: true },
  }));
}

async function followUpOf({ db, athlete, today }: Scope, roundId: string | null) {
  const round = await settledRound(db, athlete.athleteId, roundId);
  const settings = await findSettings(db);
  if (!round || !settings) return null;
  const settledOn = dayOf(round.settledAtMs, athlete.zone);
  const window = followUpWindow({ settledOn, followUpDays: settings.followUpDays, today });
  const { settledAtMs: _, ...named } = round;
  return { ...named, ...window };
}
