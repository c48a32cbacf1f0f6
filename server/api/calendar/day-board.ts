import { z } from "zod";
import { loadAcademyTime } from "@/server/data/academy-time";
import { type ArmKnowledge, armsOf } from "@/server/data/arms";
import { type SessionCard, sessionsBetween } from "@/server/data/sessions";
import { boardHours, hoursInto } from "@/server/domain/calendar/board";
import { plannedNow, plannedNowInWords } from "@/server/domain/calendar/planned-now";
import { LANE_KINDS, SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import { isUnlogged, SESSION_STATES } from "@/server/domain/calendar/session-state";
import { addDays, type CalendarDay, dayOf, instantOf } from "@/server/domain/time/calendar-day";
import { type Interval, openingsOn } from "@/server/domain/time/open-hours";
import { timeInWords } from "@/server/domain/time/words";
import type { Scope } from "../context";

/** A session as it stands on a board. `fromHour` and `toHour` are hours of the site's wall clock. */
export const boardSession = z.strictObject({
  id: z.string(),
  kind: z.enum(SESSION_KINDS),
  state: z.enum(SESSION_STATES),
  timeWords: z.string(),
  fromHour: z.number(),
  toHour: z.number(),
  laneName: z.string(),
  siteName: z.string(),
  coachName: z.string(),
  names: z.array(z.string()),
  plannedPitches: z.number(),
  /** What no longer has room by the book, in words; empty when everything has. */
  withoutRoom: z.array(z.string()),
  isUnlogged: z.boolean(),
});

/** A day by lane, a board for each site. */
export const dayBoard = z.strictObject({
  day: z.string(),
  today: z.string(),
  sites: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  boards: z.array(
    z.strictObject({
      siteId: z.string(),
      siteName: z.string(),
      zone: z.string(),
      openWords: z.string(),
      fromHour: z.number(),
      toHour: z.number(),
      /** Where now lies on the board, in hours; null on another day. */
      nowHour: z.number().nullable(),
      lanes: z.array(
        z.strictObject({
          id: z.string(),
          name: z.string(),
          kind: z.enum(LANE_KINDS),
          sessions: z.array(boardSession),
        }),
      ),
    }),
  ),
});

/**
 * The day at each live site, or at one. Without a day it is today by the first site's clock.
 * @param input as the procedure takes it
 */
export async function readDayBoard(
  { db, nowMs }: Pick<Scope, "db" | "nowMs">,
  input: { day: CalendarDay | null; siteId: string | null },
): Promise<z.input<typeof dayBoard>> {
  const firstZone = (await loadAcademyTime(db, { fromMs: nowMs, toMs: nowMs })).names.sites[0]?.zone ?? "UTC";
  const today = dayOf(nowMs, firstZone);
  const day = input.day ?? today;
  const span = { fromMs: instantOf(addDays(day, -1), 0, "UTC"), toMs: instantOf(addDays(day, 2), 0, "UTC") };
  const academy = await loadAcademyTime(db, span);
  const cards = await sessionsBetween(db, span);
  const arms = await armsOf(db, [...new Set(cards.flatMap(athleteIdsOf))], nowMs);
  const boards = academy.sites.flatMap((site) => {
    const name = academy.names.sites.find(({ id }) => id === site.id)?.name ?? "";
    if (input.siteId !== null && input.siteId !== site.id) return [];
    const { zone } = site.hours;
    const own = cards.filter((card) => card.siteId === site.id && dayOf(card.startsAtMs, zone) === day);
    const openings = openingsOn(site.hours, day);
    const spans = own.map((card) => ({ startMs: card.startsAtMs, endMs: card.endsAtMs }));
    const lanes = academy.names.lanes
      .filter((lane) => lane.siteId === site.id)
      .map(({ id, name: laneName, kind }) => {
        const onLane = own.filter((card) => card.laneId === id);
        return {
          id,
          name: laneName,
          kind,
          sessions: onLane.map((card) => boardCard(card, day, arms, nowMs)),
        };
      });
    return [
      {
        ...{ siteId: site.id, siteName: name, zone, lanes },
        ...boardHours(day, zone, [...openings, ...spans]),
        openWords: openWords(openings, zone),
        nowHour: dayOf(nowMs, zone) === day ? hoursInto(day, zone, nowMs) : null,
      },
    ];
  });
  return { day, today, boards, sites: academy.names.sites.map(({ id, name }) => ({ id, name })) };
}

const athleteIdsOf = (card: SessionCard) => card.athletes.map((one) => one.athleteId);

function openWords(openings: readonly Interval[], zone: string): string {
  if (openings.length === 0) return "closed";
  return openings
    .map((span) => `${timeInWords(span.startMs, zone)} to ${timeInWords(span.endMs, zone)}`)
    .join(" and ");
}

/** One session for a board, with what lost its room since it was booked. */
export function boardCard(
  card: SessionCard,
  day: CalendarDay,
  arms: ReadonlyMap<string, ArmKnowledge>,
  nowMs: number,
): z.input<typeof boardSession> {
  const { id, kind, state, zone, startsAtMs, endsAtMs, laneName, siteName, coachName, athletes } = card;
  return {
    ...{ id, kind, state, laneName, siteName, coachName },
    timeWords: `${timeInWords(startsAtMs, zone)} to ${timeInWords(endsAtMs, zone)}`,
    fromHour: hoursInto(day, zone, startsAtMs),
    toHour: hoursInto(day, zone, endsAtMs),
    names: athletes.map((one) => one.name),
    plannedPitches: athletes.reduce((sum, one) => sum + one.plannedPitches, 0),
    withoutRoom: state === "booked" && endsAtMs > nowMs ? withoutRoom(card, arms) : [],
    isUnlogged: isUnlogged(card, nowMs),
  };
}

function withoutRoom(card: SessionCard, arms: ReadonlyMap<string, ArmKnowledge>): string[] {
  return card.athletes.flatMap(({ athleteId, givenName }) => {
    const arm = arms.get(athleteId);
    const now = arm ? plannedNow(arm, `${card.id}:${athleteId}`) : null;
    return now && !now.hasRoom ? [`${givenName} ${plannedNowInWords(now)}`] : [];
  });
}
