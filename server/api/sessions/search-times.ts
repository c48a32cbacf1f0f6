import type { z } from "zod";
import { findSettings } from "@/server/data/academy-settings";
import { loadAcademyTime, type PlaceNames } from "@/server/data/academy-time";
import { armsOf } from "@/server/data/arms";
import { type BookingAthlete, bookingAthletes } from "@/server/data/booking-people";
import { settledRound } from "@/server/data/follow-ups";
import { findSession } from "@/server/data/sessions";
import { type ArmAnswers, armAnswers } from "@/server/domain/calendar/arm-answers";
import { type BookingLimits, bookingLimits, isTooFarAhead } from "@/server/domain/calendar/booking-limits";
import type { FoundTime } from "@/server/domain/calendar/rank-times";
import { findTimes, MAX_WINDOW_DAYS } from "@/server/domain/calendar/slot-finder";
import { refusedSpans, timeInSentence } from "@/server/domain/calendar/time-in-words";
import { Refusal } from "@/server/domain/errors/refusal";
import { addDays, daysBetween, instantOf } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import type { Scope } from "../context";
import type { FindInput, findOutput } from "./session-shapes";

/** The most times that are shown, and of one day (common practice, no source). */
const SHOWN = { all: 16, ofOneDay: 4 } as const;

/** How far apart the starts are that are offered, in minutes: short sessions fit in between (common practice). */
const stepMinFor = (durationMin: number) => (durationMin < 30 ? 15 : 30);

/** Whether the caller acts for the academy: staff book on the spot. */
export function actsAsStaff({ relations }: Pick<Scope, "relations">): boolean {
  return relations.has("coach") || relations.has("admin");
}

/** How soon and how far ahead the caller may book. */
export async function limitsFor(scope: Pick<Scope, "db" | "relations">): Promise<BookingLimits> {
  const settings = await findSettings(scope.db);
  if (!settings) throw new Error("There is no academy yet.");
  return bookingLimits(settings, actsAsStaff(scope));
}

/** The times that fit everybody and every arm, best first, in sentences; and the days an arm stops, with why. */
export async function searchTimes(scope: Scope, input: FindInput): Promise<z.input<typeof findOutput>> {
  const { db, nowMs, athlete, today } = scope;
  const limits = await limitsFor(scope);
  const window = windowOf(input, athlete.zone);
  if (isTooFarAhead(window.fromMs, limits, nowMs, athlete.zone)) {
    throw new Refusal({ reason: "too_far_ahead", horizonDays: limits.horizonDays });
  }
  await assertMovable(scope, input);
  const academy = await loadAcademyTime(db, { ...window, exceptSessionId: input.moveSessionId });
  const athletes = await bookingAthletes(db, input.athleteIds);
  const answers = armAnswers(await armsOf(db, input.athleteIds, nowMs, input.moveSessionId));
  const lastDays = [addDays(today, limits.horizonDays + 1), ...athletes.flatMap((one) => one.leftOn ?? [])];
  const endMs = Math.min(window.toMs, ...lastDays.map((day) => instantOf(day, 0, athlete.zone)));
  const found = findTimes({
    ...input,
    sites: academy.sites.filter(({ id }) => input.siteId === null || id === input.siteId),
    coaches: academy.coaches.filter(({ id }) => input.coachPersonId === null || id === input.coachPersonId),
    lanes: academy.lanes,
    busy: academy.busy,
    window: { ...window, toMs: Math.max(window.fromMs, endMs) },
    nowMs,
    noticeMin: limits.noticeMin,
    preferredCoachId: await preferredCoachOf(scope, input, athletes),
    roomOn: answers.roomOn,
    stepMin: stepMinFor(input.durationMin),
    limit: SHOWN.all,
    limitPerDay: SHOWN.ofOneDay,
  });
  return {
    times: found.times.map((time) => shownTime(time, input, academy.names, athletes)),
    refused: refusedSpans(
      found.refused.map(({ day, dryWorkFits, athleteId }) => ({
        day,
        dryWorkFits,
        answer: answers.on(athleteId, day),
      })),
    ).map(({ status, ...span }) => ({ ...span, isPain: status === "pain" })),
    unreported: athletes.flatMap((one) => unreportedOf(one, answers, today)),
  };
}

function windowOf({ fromDay, toDay }: FindInput, zone: string) {
  const lastDay =
    daysBetween(fromDay, toDay) >= MAX_WINDOW_DAYS ? addDays(fromDay, MAX_WINDOW_DAYS - 1) : toDay;
  return { fromMs: instantOf(fromDay, 0, zone), toMs: instantOf(addDays(lastDay, 1), 0, zone) };
}

async function assertMovable({ db }: Scope, { moveSessionId, athleteIds }: FindInput): Promise<void> {
  if (moveSessionId === null) return;
  const card = await findSession(db, moveSessionId);
  const isTheirs = card?.athletes.every((one) => athleteIds.includes(one.athleteId)) ?? false;
  if (!isTheirs) throw new Refusal({ reason: "not_found" });
}

async function preferredCoachOf({ db, athlete }: Scope, input: FindInput, athletes: BookingAthlete[]) {
  const round = input.roundId ? await settledRound(db, athlete.athleteId, input.roundId) : null;
  return input.coachPersonId ?? round?.coachPersonId ?? athletes[0]?.coachPersonId ?? null;
}

function shownTime(
  time: FoundTime,
  input: FindInput,
  names: PlaceNames,
  athletes: readonly BookingAthlete[],
): z.input<typeof findOutput>["times"][number] {
  const { startsAtMs, endsAtMs, siteId, laneId, coachId, room } = time;
  const site = names.sites.find(({ id }) => id === siteId);
  const coachName = names.coaches.find(({ id }) => id === coachId)?.name ?? "";
  const tightest = room.status === "at_most" ? athletes.find(({ id }) => id === room.athleteId) : undefined;
  return {
    ...{ startsAtMs, endsAtMs, siteId, laneId, coachPersonId: coachId, coachName },
    sentence: timeInSentence({
      ...{ startsAtMs, coachName, room, plannedPitches: input.plannedPitches },
      zone: site?.zone ?? "UTC",
      siteName: names.sites.length > 1 ? (site?.name ?? null) : null,
      laneName: names.lanes.find(({ id }) => id === laneId)?.name ?? "",
      athleteName: athletes.length > 1 ? (tightest?.givenName ?? null) : null,
    }),
    atMost: room.status === "at_most" ? room.atMost : null,
    holdsPlanned: room.status !== "at_most" || room.holdsPlanned,
    isWished: time.reasons.includes("family_wish"),
  };
}

function unreportedOf({ id, givenName }: BookingAthlete, answers: ArmAnswers, today: string): string[] {
  const since = answers.on(id, today).nothingReportedSince;
  return since ? [`Nothing reported for ${givenName} since ${dayInWords(since)}: ask.`] : [];
}
