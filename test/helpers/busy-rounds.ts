import { clip } from "@/db/schema/clips";
import { correction, correctionEvent } from "@/db/schema/corrections";
import { blindItem, blindSet, drawnMark, measurement, remeasureRequest } from "@/db/schema/mechanics";
import { remark } from "@/db/schema/people";
import { review } from "@/db/schema/reviews";
import { round, roundEvent } from "@/db/schema/rounds";
import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { type TestAcademy, WHO } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import { THREE_SECONDS } from "./clips";
import { kneePoints, noteMark } from "./measures";

const HOUR = 3_600_000;

type RoundRow = typeof round.$inferInsert;
type Stage = keyof AthleteRecord["rounds"];

/** What a round in each state carries beyond its beginning, as of `nowMs`. */
function stageOf(stage: Stage, coach: string, nowMs: number): Partial<RoundRow> {
  const taken = { coachPersonId: coach, takenAtMs: nowMs - 40 * HOUR };
  const sent = { ...taken, sentAtMs: nowMs - 30 * HOUR };
  const answered = { ...sent, answeredAtMs: nowMs - 10 * HOUR };
  const dueAtMs = nowMs + 20 * HOUR;
  const asked = { replyFrom: "2026-11-24", lapsesOn: "2026-12-20" };
  const stages: Record<Stage, Partial<RoundRow>> = {
    received: { dueAtMs },
    taken: { ...taken, dueAtMs },
    sent: { ...sent, ...asked },
    answered: { ...answered, dueAtMs },
    settled: { ...answered, settledAtMs: nowMs - 5 * HOUR },
    retake: { ...taken, ...asked, pausedOpenMs: 4 * HOUR, retakeFrom: "taken" },
  };
  return stages[stage];
}

/** A round in every state with a clip each, and a clip that waits to be sent. */
export async function fillRounds(
  { db, clock }: TestAcademy,
  record: AthleteRecord,
  owners: { coach: string; guardian: string | null },
) {
  for (const [stage, id] of Object.entries(record.rounds) as [Stage, string][]) {
    const receivedAtMs = clock.ms - 48 * HOUR;
    await db.insert(round).values({
      id,
      athleteId: record.athleteId,
      siteId: WHO.site,
      state: stage,
      receivedAtMs,
      ...stageOf(stage, owners.coach, clock.ms),
    });
    await db.insert(roundEvent).values({
      id: `rev_${id}`,
      roundId: id,
      kind: "received",
      actorPersonId: record.personId,
      atMs: receivedAtMs,
    });
    await db.insert(clip).values({
      ...fileOf(record.clips[stage], record, owners.guardian, clock.ms),
      roundId: id,
      part: "first",
      state: "ready",
      view: "open_side",
      pitchesThrown: 6,
      alreadyOnLog: true,
      note: record.marker,
      filmedOn: "2026-11-23",
    });
  }
  await db
    .insert(clip)
    .values({ ...fileOf(record.clips.waiting, record, owners.guardian, clock.ms), state: "waiting" });
}

function fileOf(id: string, record: AthleteRecord, guardian: string | null, nowMs: number) {
  return {
    id,
    athleteId: record.athleteId,
    uploadId: `up_${id}`,
    uploadedByPersonId: guardian ?? record.personId,
    createdAtMs: nowMs - 2 * HOUR,
    retainUntil: "2027-05-25",
    ...THREE_SECONDS,
  };
}

/** The reviews that went out, and an open correction in the sent and in the answered round. */
export async function fillCorrections({ db, clock }: TestAcademy, record: AthleteRecord, coach: string) {
  const [anyCheckpoint] = STARTING_LIBRARY;
  if (!anyCheckpoint) throw new Error("The starting library is empty.");
  const sentAtMs = clock.ms - 30 * HOUR;
  for (const stage of ["sent", "answered", "settled"] as const) {
    await db.insert(review).values({
      id: record.reviews[stage],
      roundId: record.rounds[stage],
      athleteId: record.athleteId,
      kind: "review",
      coachPersonId: coach,
      openedAtMs: clock.ms - 31 * HOUR,
      sentAtMs,
    });
  }
  const open = { sent: record.correction, answered: record.answeredCorrection };
  for (const [stage, id] of Object.entries(open) as ["sent" | "answered", string][]) {
    const roundId = record.rounds[stage];
    await db.insert(correction).values({
      id,
      athleteId: record.athleteId,
      reviewId: record.reviews[stage],
      roundId,
      checkpointId: anyCheckpoint.id,
      phase: anyCheckpoint.phase,
      cue: `${record.marker} cue`,
      drill: "Towel drill, twenty a day",
      clipId: record.clips[stage],
      frame: 18,
      position: 1,
      state: "given",
      givenAtMs: sentAtMs,
    });
    await db.insert(correctionEvent).values({
      id: `cev_${id}`,
      correctionId: id,
      kind: "given",
      roundId,
      actorPersonId: coach,
      atMs: sentAtMs,
    });
  }
}

/** A measure and a note on the picture of the sent review, and a request to measure that frame again. */
export async function fillMeasures({ db, clock }: TestAcademy, record: AthleteRecord, coach: string) {
  const { athleteId } = record;
  const [clipId, reviewId] = [record.clips.sent, record.reviews.sent];
  await db.insert(measurement).values({
    ...{ id: record.measurement, athleteId, reviewId, clipId, coachPersonId: coach },
    ...{ kind: "front_knee_flexion", view: "open_side", frame: 108, value: 40 },
    points: JSON.stringify(kneePoints(40)),
    ...{ checkpointId: "front-knee-bent", measuredOn: "2026-11-24", atMs: clock.ms - 30 * HOUR },
  });
  await db.insert(remeasureRequest).values({
    ...{ id: record.remeasureRequest, measurementId: record.measurement, athleteId },
    ...{ askedByPersonId: coach, askedAtMs: clock.ms - 2 * HOUR },
  });
  const { text, points, ...mark } = noteMark({ clipId });
  const remarkId = `rmk_${record.measurement}`;
  await db.insert(remark).values({ id: remarkId, text: `${record.marker} note` });
  await db.insert(drawnMark).values({
    ...mark,
    id: `mrk_${reviewId}`,
    reviewId,
    remarkId,
    points: JSON.stringify(points),
    position: 0,
  });
}

/** An open blind set of one frame of the sent review's clip. */
export async function fillBlindSet({ db, clock }: TestAcademy, record: AthleteRecord) {
  await db.insert(blindSet).values({
    ...{ id: record.blindSet, name: "Front knee", madeByPersonId: WHO.admin },
    madeAtMs: clock.ms - 2 * HOUR,
  });
  await db.insert(blindItem).values({
    ...{ id: record.blindItem, setId: record.blindSet, position: 0, athleteId: record.athleteId },
    ...{ checkpointId: "front-knee-bent", clipId: record.clips.sent, frame: 108 },
    ...{ view: "open_side", kind: "judgement" },
  });
}
