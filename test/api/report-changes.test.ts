import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { correction, correctionEvent } from "@/db/schema/corrections";
import { judgement } from "@/db/schema/mechanics";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { addDays, instantOf } from "@/server/domain/time/calendar-day";
import { type TestAcademy, WHO, ZONE } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";

const GIVEN_ON = "2026-06-01";
const [FIRST, SECOND] = [STARTING_LIBRARY[5]?.id ?? "", STARTING_LIBRARY[6]?.id ?? ""];

let academy: TestAcademy;
let records: Record<"child" | "stranger", AthleteRecord>;

beforeEach(async () => {
  ({ academy, records } = await makeBusyAcademy());
  for (let week = 0; week < 8; week += 1) {
    const day = addDays("2026-04-06", 7 * week);
    for (const score of [1, 1, 2]) await judge(records.stranger, FIRST, day, score);
  }
});

let judged = 0;

/** A clip of a day, judged at a checkpoint from the open side. */
async function judge(record: AthleteRecord, checkpointId: string, filmedOn: string, score: number) {
  judged += 1;
  const [row] = await academy.db.select().from(clip).where(eq(clip.id, record.clips.sent));
  if (!row) throw new Error("The busy academy has no such clip.");
  const id = `clp_judged_${judged}`;
  await academy.db.insert(clip).values({ ...row, id, uploadId: `up_${id}`, filmedOn });
  await academy.db.insert(judgement).values({
    ...{ id: `jdg_${judged}`, athleteId: record.athleteId, checkpointId, clipId: id, frame: 1, score },
    ...{
      coachPersonId: WHO.coach,
      view: "open_side",
      judgedOn: filmedOn,
      atMs: instantOf(filmedOn, 900, ZONE),
    },
  });
}

/** A correction given on the first of June, with three looks before it and three after, a week apart. */
async function worked(checkpointId: string, before: number, after: number) {
  const record = records.child;
  const [row] = await academy.db.select().from(correction).where(eq(correction.id, record.correction));
  if (!row) throw new Error("The busy academy has no such correction.");
  const [id, givenAtMs] = [`cor_${checkpointId}`, instantOf(GIVEN_ON, 900, ZONE)];
  await academy.db
    .insert(correction)
    .values({ ...row, id, checkpointId, clipId: null, frame: null, givenAtMs });
  const event = { correctionId: id, kind: "given", actorPersonId: WHO.coach, atMs: givenAtMs } as const;
  await academy.db.insert(correctionEvent).values({ ...event, id: `cev_${id}` });
  for (const week of [-3, -2, -1]) await judge(record, checkpointId, addDays(GIVEN_ON, 7 * week), before);
  for (const week of [1, 2, 3]) await judge(record, checkpointId, addDays(GIVEN_ON, 7 * week), after);
}

async function changesOf(fromOn: string, toOn: string) {
  const api = await academy.as(WHO.guardian);
  const view = await api.seasonReports.view({ athleteId: records.child.athleteId, span: { fromOn, toOn } });
  return view.report.changes;
}

describe("what a report says has changed", () => {
  it("is told of the record in the fixed words, beside what did not change, of how many", async () => {
    await worked(FIRST, 0, 3);
    await worked(SECOND, 1, 1);
    const changes = await changesOf("2026-01-01", "2026-12-31");
    expect(changes.told).toMatchObject([{ checkpointName: STARTING_LIBRARY[5]?.name }]);
    expect(changes.told[0]?.seen).toBe("Judged from the open side, since Mon 1 Jun 2026");
    expect(changes.told[0]?.words.slice(0, 2).join(" ")).toMatch(
      /^Improved beyond measurement error\. Median 0 of 3 days before, 3 of 3 days after: 3 steps more/,
    );
    expect(changes.same).toMatchObject([{ checkpointName: STARTING_LIBRARY[6]?.name }]);
    expect(changes).toMatchObject({ lookedAt: 2 });
    expect(changes.words[0]).toBe(
      "2 checkpoints were looked at together; 1 changed beyond measurement error.",
    );
  });

  it("rests on what was seen until the season ended, and on no correction of another season", async () => {
    await worked(FIRST, 0, 3);
    expect(await changesOf("2026-01-01", "2026-06-10")).toMatchObject({ lookedAt: 0, tooFew: 1, told: [] });
    expect(await changesOf("2025-01-01", "2025-12-31")).toMatchObject({ lookedAt: 0, tooFew: 0, told: [] });
  });
});
