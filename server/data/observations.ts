import { and, eq, isNotNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { judgement, measurement } from "@/db/schema/mechanics";
import { FEWEST_DELIVERIES } from "@/server/domain/mechanics/measure-error";
import type { Observation } from "@/server/domain/mechanics/observation";
import type { DayRepeats } from "@/server/domain/mechanics/series-error";

/**
 * Everything that was judged and measured of an athlete at a checkpoint. The day is that on which the clip was filmed;
 * of what was seen in person, and of a clip whose day nobody said, the day on which it was judged. A measure that
 * belongs to no checkpoint belongs to no series and is left out.
 * @returns in no order
 */
export async function observationsOf(db: Db, athleteId: string): Promise<Observation[]> {
  const judged = await db
    .select({
      id: judgement.id,
      checkpointId: judgement.checkpointId,
      value: judgement.score,
      day: sql<string>`coalesce(${clip.filmedOn}, ${judgement.judgedOn})`,
      clipId: judgement.clipId,
      frame: judgement.frame,
      view: judgement.view,
      coachId: judgement.coachPersonId,
      pitchType: clip.pitchType,
    })
    .from(judgement)
    .leftJoin(clip, eq(clip.id, judgement.clipId))
    .where(eq(judgement.athleteId, athleteId));
  const measured = await db
    .select({
      id: measurement.id,
      checkpointId: sql<string>`${measurement.checkpointId}`,
      kind: measurement.kind,
      value: measurement.value,
      day: sql<string>`coalesce(${clip.filmedOn}, ${measurement.measuredOn})`,
      clipId: measurement.clipId,
      frame: measurement.frame,
      view: measurement.view,
      coachId: measurement.coachPersonId,
      pitchType: measurement.pitchType,
      repeatOfId: measurement.repeatOfId,
    })
    .from(measurement)
    .leftJoin(clip, eq(clip.id, measurement.clipId))
    .where(and(eq(measurement.athleteId, athleteId), isNotNull(measurement.checkpointId)));
  return [...judged.map((row) => ({ ...row, kind: "judgement" as const, repeatOfId: null })), ...measured];
}

/**
 * What the academy's own days tell of the error of its series: of each athlete, day, pitch type, checkpoint and view the
 * deliveries that were judged or measured, each once, where they are {@link FEWEST_DELIVERIES} or more. The first look
 * at a clip counts as its delivery.
 */
export async function dayRepeats(db: Db): Promise<DayRepeats[]> {
  const judged = db.$with("judged_once").as(
    db
      .select({
        athleteId: judgement.athleteId,
        checkpointId: judgement.checkpointId,
        view: judgement.view,
        value: judgement.score,
        filmedOn: clip.filmedOn,
        pitchType: clip.pitchType,
        turn: sql<number>`row_number() OVER (PARTITION BY ${judgement.clipId}, ${judgement.checkpointId}
          ORDER BY ${judgement.atMs}, "judgement".rowid)`.as("turn"),
      })
      .from(judgement)
      .innerJoin(clip, eq(clip.id, judgement.clipId)),
  );
  const judgements = await db
    .with(judged)
    .select({
      checkpointId: judged.checkpointId,
      view: judged.view,
      values: sql<string>`json_group_array(${judged.value})`,
    })
    .from(judged)
    .where(eq(judged.turn, 1))
    .groupBy(judged.athleteId, judged.filmedOn, judged.pitchType, judged.checkpointId, judged.view)
    .having(sql`count(*) >= ${FEWEST_DELIVERIES}`);
  return [
    ...judgements.map(({ values, ...row }) => ({
      ...row,
      kind: "judgement" as const,
      values: JSON.parse(values) as number[],
    })),
    ...(await measuredRepeats(db)),
  ];
}

async function measuredRepeats(db: Db): Promise<DayRepeats[]> {
  const measured = db.$with("measured_once").as(
    db
      .select({
        athleteId: measurement.athleteId,
        checkpointId: measurement.checkpointId,
        kind: measurement.kind,
        view: measurement.view,
        value: measurement.value,
        pitchType: measurement.pitchType,
        filmedOn: clip.filmedOn,
        turn: sql<number>`row_number() OVER (PARTITION BY ${measurement.clipId}, ${measurement.kind},
          ${measurement.checkpointId} ORDER BY ${measurement.atMs}, "measurement".rowid)`.as("turn"),
      })
      .from(measurement)
      .innerJoin(clip, eq(clip.id, measurement.clipId))
      .where(and(isNotNull(measurement.reviewId), isNotNull(measurement.checkpointId))),
  );
  const rows = await db
    .with(measured)
    .select({
      checkpointId: sql<string>`${measured.checkpointId}`,
      kind: measured.kind,
      view: measured.view,
      values: sql<string>`json_group_array(${measured.value})`,
    })
    .from(measured)
    .where(eq(measured.turn, 1))
    .groupBy(
      ...[measured.athleteId, measured.filmedOn, measured.pitchType],
      ...[measured.checkpointId, measured.kind, measured.view],
    )
    .having(sql`count(*) >= ${FEWEST_DELIVERIES}`);
  return rows.map(({ values, ...row }) => ({ ...row, values: JSON.parse(values) as number[] }));
}

/** Where a clip belongs, and whether its film is there to be looked at, or on its way. */
export interface ClipPlace {
  roundId: string;
  isKept: boolean;
}

/** The clips of an athlete that belong to a round, by their ids. */
export async function clipPlaces(db: Db, athleteId: string): Promise<Map<string, ClipPlace>> {
  const rows = await db
    .select({ id: clip.id, roundId: clip.roundId, state: clip.state })
    .from(clip)
    .where(and(eq(clip.athleteId, athleteId), isNotNull(clip.roundId)));
  return new Map(
    rows.flatMap(({ id, roundId, state }) =>
      roundId === null ? [] : [[id, { roundId, isKept: state === "ready" || state === "drawing" }] as const],
    ),
  );
}
