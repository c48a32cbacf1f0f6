import { z } from "zod";
import { armsOf } from "@/server/data/arms";
import { promiseHours } from "@/server/data/promise-hours";
import { findSession, type SessionCard, sessionsBetween } from "@/server/data/sessions";
import {
  drawingProgress,
  nextSessionId,
  type OwedRoundRow,
  owedRounds,
  sitesInUse,
  unloggedSessionIds,
} from "@/server/data/today";
import { plannedNow, plannedNowInWords } from "@/server/domain/calendar/planned-now";
import { SESSION_KINDS } from "@/server/domain/calendar/session-kind";
import { SESSION_STATES } from "@/server/domain/calendar/session-state";
import { fullName } from "@/server/domain/people/person";
import { shortName } from "@/server/domain/people/short-name";
import { DEFAULT_ESTIMATE_MIN, queueOrder } from "@/server/domain/reviews/queue-order";
import { dayOf } from "@/server/domain/time/calendar-day";
import { openingsOn } from "@/server/domain/time/open-hours";
import { answerFor, armAnswer } from "./arm-answer";
import type { Scope } from "./context";

const daySession = z.strictObject({
  id: z.string(),
  kind: z.enum(SESSION_KINDS),
  state: z.enum(SESSION_STATES),
  startsAtMs: z.number(),
  endsAtMs: z.number(),
  zone: z.string(),
  siteName: z.string(),
  laneName: z.string(),
  coachPersonId: z.string(),
  coachName: z.string(),
  places: z.int(),
  athletes: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      shortName: z.string(),
      plannedPitches: z.int(),
    }),
  ),
});

/** The value of a session of the day. */
export type DaySession = z.output<typeof daySession>;

/** What staff owe today and who is coming; own sessions, rounds and arms stand first. */
export const dayView = z.strictObject({
  nowMs: z.number(),
  today: z.string(),
  zone: z.string(),
  siteNames: z.array(z.string()),
  myPersonId: z.string(),
  /** From the first opening to the last close of the day; null where every site is closed. */
  open: z.strictObject({ startMs: z.number(), endMs: z.number() }).nullable(),
  sessions: z.array(daySession),
  next: daySession.nullable(),
  unlogged: z.array(daySession),
  owed: z.array(
    z.strictObject({
      roundId: z.string(),
      athleteName: z.string(),
      part: z.enum(["first", "reply"]),
      isTaken: z.boolean(),
      dueAtMs: z.number(),
      isLate: z.boolean(),
      zone: z.string(),
      coachName: z.string().nullable(),
      isMine: z.boolean(),
    }),
  ),
  arms: z.array(
    z.strictObject({
      athleteId: z.string(),
      name: z.string(),
      startsAtMs: z.number(),
      zone: z.string(),
      isMine: z.boolean(),
      arm: armAnswer,
      /** "asks for 40, at most 15 by the book now" for sessions of today that have no room; else empty. */
      withoutRoom: z.array(z.string()),
    }),
  ),
  drawing: z.strictObject({ ready: z.int(), drawing: z.int() }),
});

/** The value of {@link dayView}. */
export type DayView = z.output<typeof dayView>;

/** Reads the day for this member of staff. */
export async function dayFor({ db, nowMs, actor }: Scope): Promise<DayView> {
  const sites = await sitesInUse(db);
  const zone = sites[0]?.zone ?? "UTC";
  const around = await sessionsBetween(db, { fromMs: nowMs - 36 * HOUR_MS, toMs: nowMs + 36 * HOUR_MS });
  const today = around.filter((card) => dayOf(card.startsAtMs, card.zone) === dayOf(nowMs, card.zone));
  const isCoach = actor.roles.includes("coach");
  const lastMs = Math.max(nowMs, ...today.map((card) => card.startsAtMs));
  const next = await nextSessionId(db, lastMs, isCoach ? actor.personId : null);
  return {
    nowMs,
    today: dayOf(nowMs, zone),
    zone,
    siteNames: sites.map((site) => site.name),
    myPersonId: actor.personId,
    open: await openSpan(db, sites, nowMs),
    sessions: today.map(asDaySession),
    next: next ? ((await cards(db, [next])).map(asDaySession)[0] ?? null) : null,
    unlogged: (await cards(db, await unloggedSessionIds(db, nowMs))).map(asDaySession),
    owed: ownFirst(
      queueOrder((await owedRounds(db)).map(withEstimate), nowMs).map((row) => asOwed(row, actor.personId)),
    ),
    arms: ownFirst(await armsComing(db, today, nowMs, actor.personId)),
    drawing: await drawingProgress(db),
  };
}

const HOUR_MS = 3_600_000;

async function cards(db: Scope["db"], ids: readonly string[]): Promise<SessionCard[]> {
  const found = await Promise.all(ids.map((id) => findSession(db, id)));
  return found.filter((card) => card !== null);
}

function asDaySession(card: SessionCard): DaySession {
  const {
    id,
    kind,
    state,
    startsAtMs,
    endsAtMs,
    zone,
    siteName,
    laneName,
    coachPersonId,
    coachName,
    places,
  } = card;
  const athletes = card.athletes.map(({ athleteId, name, givenName, plannedPitches }) => ({
    athleteId,
    name,
    shortName: shortName({ givenName, familyName: name.slice(givenName.length) }),
    plannedPitches,
  }));
  return {
    id,
    kind,
    state,
    startsAtMs,
    endsAtMs,
    zone,
    siteName,
    laneName,
    coachPersonId,
    coachName,
    places,
    athletes,
  };
}

async function openSpan(
  db: Scope["db"],
  sites: readonly { id: string; zone: string }[],
  nowMs: number,
): Promise<DayView["open"]> {
  const hours = await Promise.all(sites.map((site) => promiseHours(db, site.id)));
  const openings = hours.flatMap((each) => openingsOn(each, dayOf(nowMs, each.zone)));
  if (openings.length === 0) return null;
  return {
    startMs: Math.min(...openings.map((opening) => opening.startMs)),
    endMs: Math.max(...openings.map((opening) => opening.endMs)),
  };
}

function withEstimate(row: OwedRoundRow) {
  return { ...row, estimateMin: DEFAULT_ESTIMATE_MIN[row.state === "answered" ? "check" : "review"] };
}

function asOwed(
  row: OwedRoundRow & { lateness: { kind: "left" | "late" } },
  myPersonId: string,
): DayView["owed"][number] {
  const { coachGivenName: givenName, coachFamilyName: familyName } = row;
  return {
    roundId: row.id,
    athleteName: fullName(row),
    part: row.state === "answered" ? "reply" : "first",
    isTaken: row.state !== "received",
    dueAtMs: row.dueAtMs,
    isLate: row.lateness.kind === "late",
    zone: row.zone,
    coachName: givenName === null ? null : fullName({ givenName, familyName: familyName ?? "" }),
    isMine: row.coachPersonId === myPersonId,
  };
}

/** How the arms of today's sessions stand, the sessions of today themselves left out of what is planned. */
async function armsComing(db: Scope["db"], today: readonly SessionCard[], nowMs: number, myPersonId: string) {
  const coming = new Map(
    today
      .toReversed()
      .flatMap((card) => card.athletes.map((each) => [each.athleteId, { card, name: each.name }])),
  );
  const arms = await armsOf(db, [...coming.keys()], nowMs);
  const rows = [...coming].flatMap(([athleteId, { card, name }]) => {
    const arm = arms.get(athleteId);
    if (!arm) return [];
    const ofToday = arm.planned.filter(
      (plan) => plan.plannedOn === arm.today && arm.sessionOfPlanned.has(plan.id),
    );
    const planned = arm.planned.filter((plan) => !ofToday.includes(plan));
    const withoutRoom = ofToday
      .map((plan) => plannedNow(arm, plan.id))
      .filter((now) => now !== null && !now.hasRoom)
      .map((now) => (now ? plannedNowInWords(now) : ""));
    const { startsAtMs, zone } = card;
    const isMine = card.coachPersonId === myPersonId;
    return [
      {
        athleteId,
        name,
        startsAtMs,
        zone,
        isMine,
        withoutRoom,
        arm: answerFor({ ...arm, planned, day: arm.today }),
      },
    ];
  });
  return rows.sort((a, b) => a.startsAtMs - b.startsAtMs || a.name.localeCompare(b.name));
}

/** One's own first, then what nobody has, then what others have; the order within each is kept. */
function ownFirst<Row extends { isMine: boolean; coachName?: string | null }>(rows: readonly Row[]): Row[] {
  const place = (row: Row) => (row.isMine ? 0 : row.coachName === null ? 1 : 2);
  return rows.toSorted((a, b) => place(a) - place(b));
}
