import { z } from "zod";
import { armsOf } from "@/server/data/arms";
import { bookingAthletes, staffNames } from "@/server/data/booking-people";
import { correctionsOf } from "@/server/data/corrections";
import { checkInsOf, type KeptLogLine, logLinesOf, plannedCorrectionIds } from "@/server/data/session-logs";
import type { SessionCard } from "@/server/data/sessions";
import { teamsOf } from "@/server/data/teams";
import { plannedNow, plannedNowInWords } from "@/server/domain/calendar/planned-now";
import { SESSION_ACTS, stepSession } from "@/server/domain/calendar/session-state";
import { isOfAge } from "@/server/domain/people/person";
import { isOpen } from "@/server/domain/reviews/correction-state";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import { whyInSentences } from "@/server/domain/throwing/why";
import { dayOf } from "@/server/domain/time/calendar-day";
import type { Scope } from "../context";
import { armNow, loggedLine, plannedCorrection, sessionHead } from "./session-shapes";

const person = z.strictObject({ personId: z.string(), name: z.string() });

/** A session as staff work on it. */
export const staffView = z.strictObject({
  head: sessionHead,
  /** What can be done to it at this moment. */
  acts: z.array(z.enum(SESSION_ACTS)),
  mayRun: z.boolean(),
  athletes: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      givenName: z.string(),
      isMinor: z.boolean(),
      today: z.string(),
      plannedPitches: z.number(),
      now: armNow.nullable(),
      unreportedSince: z.string().nullable(),
      /** What a game told at the check-in can be for. */
      teams: z.array(z.strictObject({ id: z.string(), name: z.string(), hasEnded: z.boolean() })),
      checkIn: z
        .strictObject({
          thrownSince: z.boolean(),
          pain: z.boolean(),
          atMs: z.number(),
          askedByName: z.string(),
        })
        .nullable(),
      corrections: z.array(plannedCorrection),
      log: loggedLine.nullable(),
      guardians: z.array(person),
    }),
  ),
  staff: z.array(person),
});

/** A session as one athlete's family sees it: nothing of whoever else comes but their number. */
export const familyView = z.strictObject({
  head: sessionHead,
  acts: z.array(z.enum(SESSION_ACTS)),
  mayChange: z.boolean(),
  others: z.number(),
  plannedPitches: z.number(),
  now: armNow.nullable(),
  corrections: z.array(plannedCorrection),
  log: loggedLine.nullable(),
});

/** A session with all that staff need to run it: who comes, what the book leaves them now, the plan, the log. */
export async function viewForStaff(scope: Scope, card: SessionCard): Promise<z.input<typeof staffView>> {
  const { db, nowMs, actor } = scope;
  const ids = card.athletes.map((one) => one.athleteId);
  const arms = await armsOf(db, ids, nowMs);
  const people = await bookingAthletes(db, ids);
  const checkIns = await checkInsOf(db, card.id);
  const lines = await logLinesOf(db, card.id);
  const planned = await plannedCorrectionIds(db, card.id);
  const athletes = [];
  for (const own of card.athletes) {
    const arm = arms.get(own.athleteId);
    const known = people.find(({ id }) => id === own.athleteId);
    const asked = checkIns.filter((each) => each.athleteId === own.athleteId).at(-1);
    const { athleteId: _, ...checkIn } = asked ?? { athleteId: "" };
    athletes.push({
      ...own,
      isMinor: known ? !isOfAge(known.bornOn, dayOf(card.startsAtMs, card.zone)) : true,
      today: arm?.today ?? dayOf(nowMs, card.zone),
      now: arm ? shownNow(arm, card.id, own.athleteId) : null,
      unreportedSince: arm?.lastReportedOn ?? null,
      teams: (await teamsOf(db, own.athleteId)).map(({ id, name, endedAtMs }) => ({
        ...{ id, name, hasEnded: endedAtMs !== null },
      })),
      checkIn: asked ? (checkIn as Omit<typeof asked, "athleteId">) : null,
      corrections: await correctionsFor(scope, own.athleteId, planned),
      log: lineOf(lines, own.athleteId),
      guardians: known?.guardians ?? [],
    });
  }
  return {
    ...{ head: headOf(card), athletes, acts: actsOn(card, nowMs) },
    mayRun: actor.roles.includes("coach"),
    staff: await staffNames(db),
  };
}

/** The same session for one athlete's family. */
export async function viewForFamily(
  scope: Scope,
  card: SessionCard,
  mayChange: boolean,
): Promise<z.input<typeof familyView>> {
  const { db, nowMs, athlete } = scope;
  const { athleteId } = athlete;
  const arm = (await armsOf(db, [athleteId], nowMs)).get(athleteId);
  const own = card.athletes.find((one) => one.athleteId === athleteId);
  const planned = await plannedCorrectionIds(db, card.id);
  return {
    ...{ head: headOf(card), acts: actsOn(card, nowMs), mayChange },
    others: card.athletes.length - 1,
    plannedPitches: own?.plannedPitches ?? 0,
    now: arm ? shownNow(arm, card.id, athleteId) : null,
    corrections: (await correctionsFor(scope, athleteId, planned)).filter((each) => each.isPlanned),
    log: lineOf(await logLinesOf(db, card.id), athleteId),
  };
}

/** The part of a session that whoever may see it may see. */
export function headOf(card: SessionCard): z.input<typeof sessionHead> {
  const { id, kind, state, startsAtMs, endsAtMs, zone, siteId, siteName, laneId, laneName } = card;
  const { coachPersonId, coachName, secondAdult, cancelReason, version } = card;
  return {
    ...{ id, kind, state, startsAtMs, endsAtMs, zone, siteId, siteName, laneId, laneName },
    ...{ coachPersonId, coachName, secondAdult, cancelReason, version },
  };
}

function actsOn(card: SessionCard, nowMs: number) {
  return SESSION_ACTS.filter((act) => stepSession(card, act, nowMs).ok);
}

/** What a planned session asks for beside what the book leaves now, in words; null when it asks for nothing. */
export function shownNow(
  arm: Omit<ArmQuestion, "day">,
  sessionId: string,
  athleteId: string,
): z.input<typeof armNow> | null {
  const now = plannedNow(arm, `${sessionId}:${athleteId}`);
  if (!now) return null;
  return { words: plannedNowInWords(now), hasRoom: now.hasRoom, why: whyInSentences(now.answer) };
}

function lineOf(lines: readonly KeptLogLine[], athleteId: string): z.input<typeof loggedLine> | null {
  const line = lines.find((each) => each.athleteId === athleteId);
  if (!line) return null;
  const { athleteId: _, ...rest } = line;
  return rest;
}

/** The planned corrections first, then whatever else is open. */
async function correctionsFor({ db }: Scope, athleteId: string, planned: ReadonlySet<string>) {
  const all = await correctionsOf(db, athleteId);
  return all
    .filter((each) => planned.has(each.id) || isOpen(each.standing.state))
    .map(({ id: correctionId, checkpointName, cue, drill, standing }) => {
      return {
        correctionId,
        checkpointName,
        cue,
        drill,
        state: standing.state,
        isPlanned: planned.has(correctionId),
      };
    })
    .sort((a, b) => Number(b.isPlanned) - Number(a.isPlanned));
}
