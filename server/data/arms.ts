import type { Db } from "@/db/client";
import type { SessionKind } from "@/server/domain/calendar/session-kind";
import { standingOverrides } from "@/server/domain/rule-books/limit-override";
import { openOutings } from "@/server/domain/throwing/open-outings";
import { painStop } from "@/server/domain/throwing/pain";
import type { ArmQuestion } from "@/server/domain/throwing/pitches-allowed";
import { RULE_LEVELS } from "@/server/domain/throwing/rule";
import type { PlannedThrows, ThrowKind } from "@/server/domain/throwing/throw-entry";
import { addDays, type CalendarDay, dayOf } from "@/server/domain/time/calendar-day";
import { academyReading } from "./academy-reading";
import { bookShelf } from "./arm-books";
import { type ArmRows, armReader, byAthlete } from "./arm-rows";

/**
 * How far back the log is read for a limit, in days: longer than any rest and any row of days, seen from two weeks back.
 * Books that add up more days have their whole span read beside it.
 */
const LOOK_BACK_DAYS = 40;

const DAY_MS = 86_400_000;

const THROWN_AS: Record<SessionKind, ThrowKind> = {
  lesson: "lesson",
  bullpen: "bullpen",
  group: "lesson",
  assessment: "lesson",
  dry_work: "lesson",
};

/** How throws in a session of this kind stand on the log. */
export function thrownAs(kind: SessionKind): ThrowKind {
  return THROWN_AS[kind];
}

/** All that is known of one arm, ready to be asked about any day. */
export interface ArmKnowledge extends Omit<ArmQuestion, "day"> {
  athleteId: string;
  zone: string;
  /** Planned id -> the session it stands for; outings are not in it. */
  sessionOfPlanned: ReadonlyMap<string, string>;
}

/**
 * What is known of several arms as of `nowMs`, by athlete id; unknown ids are left out. Booked sessions count at their
 * planned pitches until they are logged; `exceptSessionId` leaves one out, as when it is being moved. A correction is
 * there whatever its day: it may have moved throws out of the days that are looked back on. The log is read as far back
 * as limits look; advice over months is for {@link armOf}.
 */
export async function armsOf(
  db: Db,
  athleteIds: readonly string[],
  nowMs: number,
  exceptSessionId: string | null = null,
): Promise<Map<string, ArmKnowledge>> {
  return readArms(db, { athleteIds, nowMs, exceptSessionId, levels: ["limit"] });
}

/**
 * The same with the log read as far back as it takes to ask about days that are over.
 * @param daysBack how many days before `nowMs` the first day lies that is asked about, and how far the asked rules look
 * back from it, together
 */
export async function armsOfThePast(
  db: Db,
  athleteIds: readonly string[],
  nowMs: number,
  daysBack: number,
): Promise<Map<string, ArmKnowledge>> {
  return readArms(db, { athleteIds, nowMs, exceptSessionId: null, levels: ["limit"], daysBack });
}

/**
 * What is known of one arm, its log read as far back as any rule of its books looks, advice over months included.
 * @throws Error when there is no such athlete (the caller's fault)
 */
export async function armOf(
  db: Db,
  athleteId: string,
  nowMs: number,
  exceptSessionId: string | null = null,
): Promise<ArmKnowledge> {
  const asked = { athleteIds: [athleteId], nowMs, exceptSessionId, levels: RULE_LEVELS };
  const arm = (await readArms(db, asked)).get(athleteId);
  if (!arm) throw new Error(`There is no athlete ${athleteId}.`);
  return arm;
}

interface Asked {
  athleteIds: readonly string[];
  nowMs: number;
  exceptSessionId: string | null;
  levels: readonly (typeof RULE_LEVELS)[number][];
  /** Beside {@link LOOK_BACK_DAYS}. Default 0. */
  daysBack?: number;
}

async function readArms(
  db: Db,
  { athleteIds, nowMs, exceptSessionId, levels, daysBack = 0 }: Asked,
): Promise<Map<string, ArmKnowledge>> {
  const sinceDay = addDays(dayOf(nowMs, "UTC"), -LOOK_BACK_DAYS - daysBack);
  const near = { sinceDay, sinceMs: nowMs - LOOK_BACK_DAYS * DAY_MS, farIds: [], farSinceDay: sinceDay };
  const first = armReader(db, { ids: athleteIds, ...near });
  const arms = first("arms");
  const { booksOf, farOf } = await bookShelf(db, arms, first("teamBooks"));
  const read = armReader(db, { ids: athleteIds, ...near, ...farOf(arms, sinceDay, levels) });
  const { countedKinds, askAfterDays } = await academyReading(db);
  const known = knownOf(read);
  return new Map(
    arms.map((arm) => {
      const { athleteId, zone, bornOn } = arm;
      const today = dayOf(nowMs, zone);
      const entries = known.entries.get(athleteId) ?? [];
      const outings = openOutings(known.outings.get(athleteId) ?? [], entries);
      const sessions = known.booked.get(athleteId) ?? [];
      const booked = sessions.filter(({ sessionId }) => sessionId !== exceptSessionId);
      const knowledge: ArmKnowledge = {
        ...{ athleteId, zone, bornOn, today, entries, books: booksOf(arm) },
        overrides: standingOverrides(known.overrides.get(athleteId) ?? []),
        reading: { countedKinds, askAfterDays },
        planned: [...outings, ...booked.map((each) => plannedThrows(each, dayOf(each.startsAtMs, zone)))],
        sessionOfPlanned: new Map(booked.map((each) => [plannedId(each), each.sessionId])),
        pain: painStop({
          reports: known.reports.get(athleteId) ?? [],
          clearances: known.clearances.get(athleteId) ?? [],
        }),
        lastReportedOn: lastReportedOn(arm, known.spokenOf.get(athleteId)?.[0]),
      };
      return [athleteId, knowledge] as const;
    }),
  );
}

/** The throws of a booked session, by the day it is on at the athlete's home site. */
export function plannedThrows(booked: ArmRows<"booked">[number], plannedOn: CalendarDay): PlannedThrows {
  const { kind, pitches } = booked;
  return { id: plannedId(booked), plannedOn, kind: thrownAs(kind), pitches, teamId: null };
}

const plannedId = (booked: ArmRows<"booked">[number]) => `${booked.sessionId}:${booked.athleteId}`;

function knownOf(read: ReturnType<typeof armReader>) {
  return {
    entries: byAthlete(read("everyEntry")),
    outings: byAthlete(read("outings")),
    booked: byAthlete(read("booked")),
    reports: byAthlete(read("reports")),
    clearances: byAthlete(read("clearances")),
    overrides: byAthlete(read("overrides")),
    spokenOf: byAthlete(read("spokenOf")),
  };
}

/** The last day anything was said of; the day of a row that was corrected is none. */
function lastReportedOn(
  { joinedOn, zone }: ArmRows<"arms">[number],
  spoken: ArmRows<"spokenOf">[number] | undefined,
): CalendarDay {
  const { thrownOn = null, askedAtMs = null } = spoken ?? {};
  const askedOn = askedAtMs === null ? joinedOn : dayOf(askedAtMs, zone);
  return [joinedOn, askedOn, thrownOn ?? joinedOn].reduce((last, day) => (day > last ? day : last));
}
