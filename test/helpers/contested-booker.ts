import { connect } from "@/db/client";
import { insertSession } from "@/server/data/sessions";
import { unitOfWork } from "@/server/data/unit-of-work";
import { Refusal } from "@/server/domain/errors/refusal";
import { instantOf } from "@/server/domain/time/calendar-day";
import { WHO, ZONE } from "./who";

/*
 * One of several processes that fight for the same times: books without asking any rule first, so that only the
 * database stands between two sessions. Prints what it was granted and what it was refused, as one line of JSON.
 */

const [, , path = "", place = "0", count = "100"] = process.argv;
const database = connect(path);
const granted: string[] = [];
let refused = 0;
let seed = Number(place) * 7919 + 17;

/** Whole numbers below `limit` that differ from process to process and are the same on every run. */
function below(limit: number): number {
  seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
  return Math.floor((seed / 2_147_483_648) * limit);
}

const coaches = [WHO.coach, WHO.otherCoach];
const lanes = [WHO.moundLane, WHO.secondMoundLane];
const athletes = [WHO.child, WHO.teen, WHO.adult, WHO.stranger];

for (let turn = 0; turn < Number(count); turn += 1) {
  const startsAtMs = instantOf("2026-12-01", 840 + below(24) * 15, ZONE);
  try {
    const id = await unitOfWork(database, (tx) =>
      insertSession(tx, {
        ...{ kind: "bullpen", places: 1, roundId: null, correctionIds: [], siteId: WHO.site },
        ...{ startsAtMs, endsAtMs: startsAtMs + (1 + below(4)) * 15 * 60_000 },
        coachPersonId: coaches[below(2)] ?? WHO.coach,
        laneId: lanes[below(2)] ?? WHO.moundLane,
        athletes: [{ athleteId: (athletes[below(4)] ?? WHO.child).athleteId, plannedPitches: 10 }],
        secondAdult: below(4) === 0 ? { kind: "staff", personId: coaches[below(2)] ?? WHO.coach } : null,
        ...{ bookedByPersonId: WHO.admin, bookedAtMs: startsAtMs - 86_400_000 },
      }),
    );
    granted.push(id);
  } catch (error) {
    if (!(error instanceof Refusal) || error.detail.reason !== "time_taken") throw error;
    refused += 1;
  }
}

database.close();
process.stdout.write(JSON.stringify({ granted, refused }));
