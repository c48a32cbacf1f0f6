import { expect, it } from "vitest";
import { ACADEMY_ZONE } from "@/seed/people";
import { dayOf } from "@/server/domain/time/calendar-day";
import { ruleFaults } from "./book-walk";
import { type BuiltDay, groupedBy } from "./demo-days";

const FOUR_WEEKS_MS = 28 * 86_400_000;

/** What the rule book asks of every arm, and the arms that have a story of their own. */
export function describeThrows({ rows, nowMs, today }: BuiltDay): void {
  const entriesOf = groupedBy(rows.throwEntry, ({ athleteId }) => athleteId);

  it("keeps every arm within the book, but for the bullpen that a game logged later leaves no room for", () => {
    const faults = ruleFaults(rows, today);
    expect(faults.map(({ what }) => what)).toEqual(["bullpen booked"]);
    const told = rows.notice.filter(({ kind }) => kind === "session_without_room");
    const clearedIds = rows.painClearance.map(({ athleteId }) => athleteId);
    const stopped = rows.painReport.find(({ athleteId }) => !clearedIds.includes(athleteId));
    const concerned = new Set(told.map(({ aboutAthleteId }) => aboutAthleteId));
    expect(concerned).toEqual(new Set([faults[0]?.athleteId, stopped?.athleteId]));
  });

  it("has one arm stopped by pain with nothing thrown since and a lesson still booked, and one that was cleared", () => {
    const clearedIds = rows.painClearance.map(({ athleteId }) => athleteId);
    const stopped = rows.painReport.filter(({ athleteId }) => !clearedIds.includes(athleteId));
    expect([rows.painReport.length, stopped.length]).toEqual([2, 1]);
    const [stop] = stopped;
    const since = entriesOf(stop?.athleteId ?? "").filter(({ thrownOn }) => thrownOn > (stop?.feltOn ?? ""));
    expect(since).toEqual([]);
    const booked = rows.session.filter(
      ({ id, state, startsAtMs }) =>
        state === "booked" &&
        startsAtMs > nowMs &&
        rows.sessionAthlete.some((row) => row.sessionId === id && row.athleteId === stop?.athleteId),
    );
    expect(booked.length).toBeGreaterThanOrEqual(1);
  });

  it("has one arm that nobody has reported on for weeks and that comes in soon", () => {
    const longAgo = dayOf(nowMs - FOUR_WEEKS_MS, ACADEMY_ZONE);
    const silent = rows.athlete.filter(({ id }) => entriesOf(id).every(({ thrownOn }) => thrownOn < longAgo));
    expect(silent).toHaveLength(1);
    const coming = rows.sessionAthlete.filter(({ athleteId }) => athleteId === silent[0]?.id);
    const soon = rows.session.filter(
      ({ id, state }) => state === "booked" && coming.some((row) => row.sessionId === id),
    );
    expect(soon.length).toBeGreaterThanOrEqual(1);
  });

  it("counts the pitches of a clip once: on the log for those that are in no outing, and for no other", () => {
    const entryOf = groupedBy(rows.throwEntry, ({ clipId }) => clipId ?? "");
    const amiss = rows.clip.filter(({ id, pitchesThrown, alreadyOnLog, filmedOn }) => {
      const entries = entryOf(id).map(({ pitches, thrownOn }) => `${pitches} on ${thrownOn}`);
      const isCounted = !alreadyOnLog && (pitchesThrown ?? 0) > 0;
      return entries.join() !== (isCounted ? `${pitchesThrown} on ${filmedOn}` : "");
    });
    expect(amiss).toEqual([]);
  });

  it("has outings that are still to come", () => {
    expect(rows.plannedOuting.length).toBeGreaterThanOrEqual(3);
    for (const { plannedOn } of rows.plannedOuting) expect(plannedOn > today).toBe(true);
  });
}
