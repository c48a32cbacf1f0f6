import { eq } from "drizzle-orm";
import { notice } from "@/db/schema/notices";
import { session, sessionAthlete } from "@/db/schema/sessions";
import { instantOf } from "@/server/domain/time/calendar-day";
import { type TestAcademy, WHO, ZONE } from "./academy";

/** A bullpen of 40 pitches for the child on a day at 17:00. */
export async function bookBullpen(academy: TestAcademy, day: string) {
  const startsAtMs = instantOf(day, 17 * 60, ZONE);
  await academy.db.insert(session).values({
    id: "ses_bullpen",
    kind: "bullpen",
    state: "booked",
    siteId: WHO.site,
    laneId: WHO.moundLane,
    coachPersonId: WHO.coach,
    startsAtMs,
    endsAtMs: startsAtMs + 1_800_000,
    places: 1,
    bookedByPersonId: WHO.coach,
    bookedAtMs: 0,
  });
  await academy.db
    .insert(sessionAthlete)
    .values({ sessionId: "ses_bullpen", athleteId: WHO.child.athleteId, plannedPitches: 40 });
}

/** Whom notices of a kind went to, by person id. */
export async function told(academy: TestAcademy, kind: (typeof notice.$inferSelect)["kind"]) {
  const rows = await academy.db.select().from(notice).where(eq(notice.kind, kind));
  return rows.map((row) => row.toPersonId).sort();
}
