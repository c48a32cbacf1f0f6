import type { Connections } from "@/db/client";
import { academy, athlete, person } from "@/db/schema/people";
import { site } from "@/db/schema/sites";
import { throwEntry } from "@/db/schema/throwing";
import { unitOfWork } from "@/server/data/unit-of-work";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { addDays } from "@/server/domain/time/calendar-day";

/** Wed 25 Nov 2026, 15:00 in New York. */
export const NOW_MS = Date.UTC(2026, 10, 25, 20, 0);

const THROWS_A_SEASON = 120;

/** Writes athletes with a season of throws each; gives their ids. */
export async function fillRecords(on: Connections, count: number): Promise<string[]> {
  const ids = Array.from({ length: count }, (_, index) => `ath_${index}`);
  await unitOfWork(on, async (tx) => {
    await tx
      .insert(academy)
      .values({ id: "academy", isDemo: false, ...STARTING_SETTINGS, createdAtMs: NOW_MS });
    await tx.insert(site).values({ id: "site", name: "Site", zone: "America/New_York", address: "1 Lane" });
    for (const id of ids) {
      await tx
        .insert(person)
        .values({ id: `per_${id}`, givenName: "An", familyName: "Arm", createdAtMs: NOW_MS });
      await tx.insert(athlete).values({
        id,
        personId: `per_${id}`,
        bornOn: "2012-05-01",
        throws: "right",
        homeSiteId: "site",
        ruleBookId: "usa-baseball-2018",
        joinedOn: "2026-01-05",
      });
      await tx.insert(throwEntry).values(throwsOf(id));
    }
  });
  return ids;
}

function throwsOf(id: string) {
  return Array.from({ length: THROWS_A_SEASON }, (_, index) => ({
    id: `thr_${id}_${index}`,
    athleteId: id,
    thrownOn: addDays("2026-11-24", -2 * index),
    kind: index % 5 === 0 ? ("game" as const) : ("bullpen" as const),
    pitches: 15 + (index % 6) * 5,
    reportedByPersonId: "per_1",
    reportedAtMs: NOW_MS,
  }));
}
