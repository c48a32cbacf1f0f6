import { expect } from "vitest";
import { plannedOuting, throwEntry } from "@/db/schema/throwing";
import { newId } from "@/server/data/new-id";
import { instantOf } from "@/server/domain/time/calendar-day";
import { type TestAcademy, WHO, ZONE } from "./academy";

type Caller = Awaited<ReturnType<TestAcademy["as"]>>;
type Booking = Parameters<Caller["sessions"]["book"]>[0];

/** An instant of the test academy's wall clock. */
export const at = (day: string, minute: number) => instantOf(day, minute, ZONE);

/** Tue 1 Dec 2026, 17:00: six days ahead of the test clock, the academy open, everybody free. */
export const TUESDAY_AT_FIVE = at("2026-12-01", 1020);

/** A bullpen of 20 pitches for the child, watched by the guardian, on Lane 1 with their coach. */
export function bullpen(over: Partial<Booking> = {}): Booking {
  return {
    kind: "bullpen",
    startsAtMs: TUESDAY_AT_FIVE,
    durationMin: 30,
    siteId: WHO.site,
    laneId: WHO.moundLane,
    coachPersonId: WHO.coach,
    athletes: [{ athleteId: WHO.child.athleteId, plannedPitches: 20 }],
    secondAdult: { kind: "guardian", personId: WHO.guardian },
    roundId: null,
    correctionIds: [],
    ...over,
  };
}

/** Puts throws on the log of an arm, as its guardian would have. */
export async function throwOn(academy: TestAcademy, athleteId: string, thrownOn: string, pitches: number) {
  await academy.db.insert(throwEntry).values({
    ...{ id: newId("thr"), athleteId, thrownOn, pitches, kind: "game" },
    ...{ reportedByPersonId: WHO.guardian, reportedAtMs: academy.clock.ms },
  });
}

/** Plans an outing. */
export async function outingOn(academy: TestAcademy, athleteId: string, plannedOn: string, pitches: number) {
  await academy.db.insert(plannedOuting).values({
    ...{ id: newId("out"), athleteId, plannedOn, pitches },
    ...{ addedByPersonId: WHO.guardian, addedAtMs: academy.clock.ms },
  });
}

/** The reason and facts a refused call carries, or "done" when it was not refused. */
export async function refusalOf(call: Promise<unknown>): Promise<unknown> {
  try {
    await call;
    return "done";
  } catch (error) {
    const cause = error instanceof Error ? error.cause : null;
    if (cause && typeof cause === "object" && "detail" in cause) return cause.detail;
    throw error;
  }
}

/** Shows that a call is refused with exactly these facts, and that every row stays as it was. */
export async function expectRefused(academy: TestAcademy, call: () => Promise<unknown>, detail: object) {
  const before = academy.snapshot();
  expect(await refusalOf(call())).toMatchObject(detail);
  expect(academy.snapshot()).toBe(before);
}
