import { expect, it } from "vitest";
import { ACADEMY_ZONE } from "@/seed/people";
import { overlaps } from "@/server/domain/calendar/claims";
import { isWithin } from "@/server/domain/calendar/intervals";
import { secondAdultMissing } from "@/server/domain/calendar/second-adult";
import { fitsLane, SESSION_KINDS, throwsOnMound } from "@/server/domain/calendar/session-kind";
import { dayOf } from "@/server/domain/time/calendar-day";
import { type OpenHours, openingsOn } from "@/server/domain/time/open-hours";
import { type BuiltDay, groupedBy } from "./demo-days";

const LOGGED_BY_MS = 10 * 60_000;

/** What the domain asks of sessions. */
export function describeSessions({ rows, nowMs, today }: BuiltDay): void {
  const comersOf = groupedBy(rows.sessionAthlete, ({ sessionId }) => sessionId);
  const dayIn = (instantMs: number) => dayOf(instantMs, ACADEMY_ZONE);

  it("never has a coach, a lane or an athlete in two places", () => {
    const claimsOn = groupedBy(rows.claim, ({ resource }) => resource);
    const twice = [...new Set(rows.claim.map((claim) => claim.resource))].flatMap((resource) => {
      const inOrder = claimsOn(resource).sort((a, b) => a.startsAtMs - b.startsAtMs);
      return inOrder.filter((claim, index) => {
        const before = inOrder[index - 1];
        return before && overlaps(before, claim);
      });
    });
    expect(twice).toEqual([]);
  });

  it("claims coach, lane and athletes of every session that is not cancelled, and of no other", () => {
    const claimsOf = groupedBy(rows.claim, ({ sessionId }) => sessionId);
    const amiss = rows.session.filter(({ id, state, coachPersonId, laneId }) => {
      const claimed = claimsOf(id).map(({ resource }) => resource);
      if (state === "cancelled") return claimed.length > 0;
      const athletes = comersOf(id).map(({ athleteId }) => `athlete:${athleteId}`);
      const wanted = [`coach:${coachPersonId}`, `lane:${laneId}`, ...athletes];
      return wanted.some((resource) => !claimed.includes(resource));
    });
    expect(amiss).toEqual([]);
  });

  it("holds every session while its site is open and its coach works there, on a lane that suits it", () => {
    const siteHours = new Map(rows.site.map(({ id }) => [id, hoursOfSite(rows, id)]));
    const coachWeekOf = groupedBy(rows.coachHours, (row) => `${row.coachPersonId} ${row.siteId}`);
    const amiss = rows.session.filter(({ siteId, laneId, kind, coachPersonId, ...span }) => {
      const day = dayIn(span.startsAtMs);
      const week = coachWeekOf(`${coachPersonId} ${siteId}`).map(({ weekday, startsMin, endsMin }) => {
        return { weekday, opensMin: startsMin, closesMin: endsMin };
      });
      const coachHours = { zone: ACADEMY_ZONE, week, closedOn: new Set<string>() };
      const open = [siteHours.get(siteId) ?? coachHours, coachHours].every((hours) => {
        return isWithin(openingsOn(hours, day), span.startsAtMs, span.endsAtMs);
      });
      const away = rows.coachAbsence.some(
        (row) => row.coachPersonId === coachPersonId && overlaps(row, span),
      );
      const lane = rows.lane.find(({ id }) => id === laneId);
      return !open || away || lane?.siteId !== siteId || !fitsLane(kind, lane.kind);
    });
    expect(amiss).toEqual([]);
  });

  it("names a second adult wherever one is due", () => {
    const guardiansOf = groupedBy(rows.guardianship, ({ athleteId }) => athleteId);
    const bornOn = new Map(rows.athlete.map((row) => [row.id, row.bornOn]));
    const missing = rows.session.flatMap((session) => {
      const athletes = comersOf(session.id).map(({ athleteId: id }) => {
        const guardianIds = guardiansOf(id).map(({ guardianPersonId }) => guardianPersonId);
        return { id, bornOn: bornOn.get(id) ?? "", guardianIds };
      });
      const { secondAdultKind: kind, secondAdultPersonId: personId, coachPersonId: coachId } = session;
      const secondAdult = kind && personId ? { kind, personId } : null;
      return secondAdultMissing({ coachId, athletes, day: dayIn(session.startsAtMs), secondAdult }) ?? [];
    });
    expect(missing).toEqual([]);
  });

  it("has sessions all through today, done before the hour and booked after it", () => {
    const now = rows.session.filter(({ startsAtMs }) => dayIn(startsAtMs) === today);
    expect(now.length).toBeGreaterThanOrEqual(8);
    expect(new Set(now.map(({ startsAtMs }) => startsAtMs)).size).toBeGreaterThanOrEqual(4);
    const amiss = rows.session.filter(({ state, startsAtMs, endsAtMs }) => {
      if (startsAtMs > nowMs) return !["booked", "cancelled"].includes(state);
      return endsAtMs + LOGGED_BY_MS < nowMs && !["logged", "no_show", "cancelled"].includes(state);
    });
    expect(amiss).toEqual([]);
  });

  it("has sessions of every kind, a few cancelled and missed, and some booked for the two weeks ahead", () => {
    const count = (test: (session: (typeof rows.session)[number]) => boolean) =>
      rows.session.filter(test).length;
    expect(count(({ state }) => state === "cancelled")).toBeGreaterThan(10);
    expect(count(({ state }) => state === "no_show")).toBeGreaterThan(5);
    for (const kind of SESSION_KINDS)
      expect(
        count((session) => session.kind === kind),
        kind,
      ).toBeGreaterThan(10);
    expect(count(({ startsAtMs }) => startsAtMs > nowMs)).toBeGreaterThan(20);
  });

  it("asks before mound work, and confirms in the record what a session saw hold", () => {
    const asked = new Set(rows.checkIn.map((row) => `${row.sessionId} ${row.athleteId}`));
    const held = rows.session.filter(({ state, kind }) => state === "logged" && throwsOnMound(kind));
    const unasked = held.flatMap(({ id }) =>
      comersOf(id).filter((row) => !asked.has(`${id} ${row.athleteId}`)),
    );
    expect(unasked).toEqual([]);
    const sessionOf = new Map(rows.sessionLog.map(({ id, sessionId }) => [id, sessionId]));
    const inRecord = rows.correctionEvent
      .filter(({ kind }) => kind === "confirmed")
      .map((event) => `${event.sessionId} ${event.correctionId}`);
    const inLogs = rows.sessionWork
      .filter(({ outcome }) => outcome === "confirmed")
      .map((work) => `${sessionOf.get(work.sessionLogId)} ${work.correctionId}`);
    expect(inLogs.sort()).toEqual(inRecord.sort());
  });
}

function hoursOfSite({ siteHours, siteClosure }: BuiltDay["rows"], id: string): OpenHours {
  const week = siteHours.filter(({ siteId }) => siteId === id);
  const closedOn = new Set(siteClosure.filter(({ siteId }) => siteId === id).map((row) => row.closedOn));
  return { zone: ACADEMY_ZONE, week, closedOn };
}
