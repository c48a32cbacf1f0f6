import type { AcademyTime } from "@/server/domain/calendar/academy-time";
import type { ArmRoom } from "@/server/domain/calendar/arm-room";
import type { TimeSearch } from "@/server/domain/calendar/slot-finder";

/** An instant from its UTC text. */
export const at = (utc: string) => Date.parse(utc);

/** Every day of the week from one wall time to another. */
export function everyDay(opensMin: number, closesMin: number) {
  return [1, 2, 3, 4, 5, 6, 7].map((weekday) => ({ weekday, opensMin, closesMin }));
}

/** One site, one coach, a mound and a flat lane, nobody booked. */
export function calmAcademy(zone = "America/New_York", week = everyDay(0, 1440)): AcademyTime {
  return {
    sites: [{ id: "north", hours: { zone, week, closedOn: new Set() } }],
    lanes: [
      { id: "mound-1", siteId: "north", kind: "mound" },
      { id: "flat-1", siteId: "north", kind: "flat" },
    ],
    coaches: [{ id: "coach-1", hours: [{ siteId: "north", week }], absences: [] }],
    busy: [],
  };
}

/** Room for so many pitches on any day. */
export const atMost = (pitches: number) => (): ArmRoom => ({
  status: "at_most",
  pitches,
  firstFreeDay: null,
});

/** An arm that rests until a day. */
export const restingUntil = (firstFreeDay: string) => (): ArmRoom => ({
  status: "resting",
  pitches: 0,
  firstFreeDay,
});

/** A search for an hour's lesson of 30 pitches between two instants, with everything open. */
export function calmSearch(fromUtc: string, toUtc: string, over: Partial<TimeSearch> = {}): TimeSearch {
  return {
    ...calmAcademy(),
    kind: "lesson",
    durationMin: 60,
    athleteIds: ["athlete-1"],
    plannedPitches: 30,
    window: { fromMs: at(fromUtc), toMs: at(toUtc) },
    nowMs: at("2026-01-01T00:00Z"),
    noticeMin: 0,
    wish: null,
    preferredCoachId: null,
    roomOn: atMost(50),
    limit: 10_000,
    ...over,
  };
}
