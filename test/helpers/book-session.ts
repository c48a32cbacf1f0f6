import { session } from "@/db/schema/sessions";
import { type TestAcademy, WHO } from "./academy";

/** Books an hour's lesson of `coach` on the first mound lane, without asking any rule. */
export async function bookSession(academy: TestAcademy, startsAtMs: number) {
  await academy.db.insert(session).values({
    id: "ses_1",
    kind: "lesson",
    state: "booked",
    siteId: WHO.site,
    laneId: WHO.moundLane,
    coachPersonId: WHO.coach,
    startsAtMs,
    endsAtMs: startsAtMs + 3_600_000,
    places: 1,
    bookedByPersonId: WHO.admin,
    bookedAtMs: academy.clock.ms,
  });
}
