import { and, asc, eq, inArray, isNotNull, sql } from "drizzle-orm";
import type { Db } from "@/db/client";
import { checkpoint } from "@/db/schema/checkpoints";
import { clip } from "@/db/schema/clips";
import { measurement } from "@/db/schema/mechanics";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { FEWEST_DELIVERIES, type Repeats } from "@/server/domain/mechanics/measure-error";
import type { MeasureKind } from "@/server/domain/mechanics/measure-kind";
import type { DraftMeasure, MeasuredPoint } from "@/server/domain/reviews/draft";
import type { MeasureToSend } from "@/server/domain/reviews/measures-to-send";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { newId } from "./new-id";

/** A measure as it was sent; `value` is in the unit of its kind. */
export interface Measurement extends DraftMeasure {
  view: CameraView;
  value: number;
}

/** By whom and when measures are kept: with a sent review, or as one frame measured again. */
export interface Measuring {
  athleteId: string;
  reviewId: string | null;
  /** The measurement whose frame is measured again. */
  repeatOfId: string | null;
  coachPersonId: string;
  measuredOn: CalendarDay;
  atMs: number;
}

/** Keeps measures. @returns their ids, in their order */
export async function keepMeasurements(
  tx: Db,
  measuring: Measuring,
  measures: readonly MeasureToSend[],
): Promise<string[]> {
  const ids: string[] = [];
  for (const { points, ...measure } of measures) {
    const id = newId("msr");
    await tx.insert(measurement).values({ ...measuring, ...measure, id, points: JSON.stringify(points) });
    ids.push(id);
  }
  return ids;
}

/** The measures of sent reviews and checks on some clips, in the order written; none that only repeats another. */
export async function measurementsOn(db: Db, clipIds: readonly string[]): Promise<Measurement[]> {
  const rows = await db
    .select()
    .from(measurement)
    .where(and(inArray(measurement.clipId, [...clipIds]), isNotNull(measurement.reviewId)))
    .orderBy(asc(measurement.atMs), sql`"measurement".rowid`);
  return rows.map(asMeasurement);
}

/** A measurement with all that is kept of it, or null when there is none by that id. */
export async function findMeasurement(db: Db, measurementId: string) {
  const [row] = await db.select().from(measurement).where(eq(measurement.id, measurementId));
  return row ? { ...row, ...asMeasurement(row) } : null;
}

/** A row as a measure, its points read. */
export function asMeasurement(row: typeof measurement.$inferSelect): Measurement {
  const { id, kind, checkpointId, clipId, frame, untilFrame, view, value } = row;
  const points = JSON.parse(row.points) as MeasuredPoint[];
  return { id, kind, checkpointId, clipId, frame, untilFrame, points, view, value };
}

/** Everything the academy has measured more than once, as {@link Repeats} by kind, view and source. */
export async function repeatedMeasures(db: Db): Promise<Repeats[]> {
  return [...(await framesMeasuredAgain(db)), ...(await deliveriesOfOneDay(db))];
}

const values = sql<string>`json_group_array(${measurement.value})`;
type Row = { kind: MeasureKind; view: CameraView; values: string };

async function framesMeasuredAgain(db: Db): Promise<Repeats[]> {
  const rows: Row[] = await db
    .select({ kind: measurement.kind, view: measurement.view, values })
    .from(measurement)
    .where(
      sql`${measurement.repeatOfId} IS NOT NULL OR ${measurement.id} IN (
        SELECT repeat_of_id FROM measurement WHERE repeat_of_id IS NOT NULL)`,
    )
    .groupBy(sql`coalesce(${measurement.repeatOfId}, ${measurement.id})`);
  return rows.map((row) => asRepeats(row, "sameFrame"));
}

/**
 * Deliveries of one athlete, filmed on one day, of one pitch type and from one view, measured once each at one moment.
 * The first measure of a clip counts as its delivery; one without a checkpoint belongs to no moment and is left out.
 */
async function deliveriesOfOneDay(db: Db): Promise<Repeats[]> {
  const moment = sql`${measurement.kind}, ${checkpoint.event}`;
  const once = db.$with("once").as(
    db
      .select({
        athleteId: measurement.athleteId,
        kind: measurement.kind,
        view: measurement.view,
        value: measurement.value,
        pitchType: measurement.pitchType,
        event: checkpoint.event,
        filmedOn: clip.filmedOn,
        turn: sql<number>`row_number() OVER (PARTITION BY ${measurement.clipId}, ${moment}
          ORDER BY ${measurement.atMs}, "measurement".rowid)`.as("turn"),
      })
      .from(measurement)
      .innerJoin(checkpoint, eq(checkpoint.id, measurement.checkpointId))
      .innerJoin(clip, eq(clip.id, measurement.clipId))
      .where(isNotNull(measurement.reviewId)),
  );
  const rows: Row[] = await db
    .with(once)
    .select({ kind: once.kind, view: once.view, values: sql<string>`json_group_array(${once.value})` })
    .from(once)
    .where(eq(once.turn, 1))
    .groupBy(once.athleteId, once.filmedOn, once.pitchType, once.kind, once.view, once.event)
    .having(sql`count(*) >= ${FEWEST_DELIVERIES}`);
  return rows.map((row) => asRepeats(row, "sameDay"));
}

function asRepeats({ kind, view, values: all }: Row, source: Repeats["source"]): Repeats {
  return { kind, view, source, values: JSON.parse(all) as number[] };
}
