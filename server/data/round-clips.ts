import { and, asc, desc, eq, inArray, lte, ne, or, type SQL } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";

/** A clip as a screen plays it. Lengths in pixels as shown, after rotation; times in milliseconds. */
export interface PlayableClip {
  id: string;
  roundId: string;
  part: NonNullable<typeof clip.$inferSelect.part>;
  state: typeof clip.$inferSelect.state;
  view: typeof clip.$inferSelect.view;
  pitchType: typeof clip.$inferSelect.pitchType;
  pitchesThrown: number | null;
  note: string | null;
  filmedOn: string | null;
  retainUntil: string;
  widthPx: number | null;
  heightPx: number | null;
  durationMs: number | null;
  hasPoster: boolean;
  codec: string | null;
  /** Frames a second as recorded; null while nobody has said. */
  capturedFps: number | null;
  captureSource: typeof clip.$inferSelect.captureSource;
  conversion: typeof clip.$inferSelect.conversion;
  /** How much of the copy is made, 0 to 1; null when none is being made. */
  conversionShare: number | null;
  /** By its record, also once the film is gone; 0 while it is not there yet. */
  frameCount: number;
  /** Every frame's time in shown order, to a microsecond; empty while there is no film. */
  frameTimesMs: number[];
}

/**
 * The clips of a round, and others by id, each once: the first sent before the reply, each part in the order sent.
 * What gave way to a retake is left out.
 */
export async function playableClips(
  db: Db,
  roundId: string,
  otherClipIds: readonly string[] = [],
): Promise<PlayableClip[]> {
  return clipsWhere(db, or(eq(clip.roundId, roundId), inArray(clip.id, [...otherClipIds])));
}

/** Clips by their ids, of whatever round; what gave way to a retake is left out. */
export async function playableClipsBy(db: Db, clipIds: readonly string[]): Promise<PlayableClip[]> {
  return clipIds.length === 0 ? [] : clipsWhere(db, inArray(clip.id, [...clipIds]));
}

async function clipsWhere(db: Db, wanted: SQL | undefined): Promise<PlayableClip[]> {
  const rows = await db
    .select({
      id: clip.id,
      roundId: clip.roundId,
      part: clip.part,
      state: clip.state,
      view: clip.view,
      pitchType: clip.pitchType,
      pitchesThrown: clip.pitchesThrown,
      note: clip.note,
      filmedOn: clip.filmedOn,
      retainUntil: clip.retainUntil,
      widthPx: clip.widthPx,
      heightPx: clip.heightPx,
      durationMs: clip.durationMs,
      hasPoster: clip.hasPoster,
      codec: clip.codec,
      capturedFps: clip.capturedFps,
      captureSource: clip.captureSource,
      conversion: clip.conversion,
      conversionShare: clip.conversionShare,
      frameCount: clip.frameCount,
      frameTimesMs: clip.frameTimesMs,
    })
    .from(clip)
    .where(and(ne(clip.state, "replaced"), ne(clip.state, "waiting"), wanted))
    .orderBy(asc(clip.part), asc(clip.filmedOn), asc(clip.position), asc(clip.id));
  return rows.flatMap((row) =>
    row.roundId === null || row.part === null
      ? []
      : [
          {
            ...row,
            roundId: row.roundId,
            part: row.part,
            frameCount: row.frameCount ?? 0,
            frameTimesMs: row.state === "expired" ? [] : timesOf(row.frameTimesMs),
          },
        ],
  );
}

/** A clip as a list names it. */
export interface ClipHead {
  id: string;
  roundId: string;
  part: NonNullable<typeof clip.$inferSelect.part>;
  view: typeof clip.$inferSelect.view;
  filmedOn: string | null;
}

/** As many as a list of clips names: two seasons of one round a fortnight. Common practice, no source. */
const MAX_EARLIER = 60;

/**
 * The clips of the same athlete and the same view that came before a clip and whose film is there, the latest first.
 * A clip of which nobody said the view has none.
 */
export async function earlierClips(db: Db, clipId: string): Promise<ClipHead[]> {
  const [of] = await db.select().from(clip).where(eq(clip.id, clipId));
  if (!of?.view) return [];
  const rows = await db
    .select({
      id: clip.id,
      roundId: clip.roundId,
      part: clip.part,
      view: clip.view,
      filmedOn: clip.filmedOn,
    })
    .from(clip)
    .where(
      and(
        ...[eq(clip.athleteId, of.athleteId), eq(clip.view, of.view), ne(clip.id, of.id)],
        ...[inArray(clip.state, ["ready", "drawing"]), lte(clip.createdAtMs, of.createdAtMs)],
      ),
    )
    .orderBy(desc(clip.filmedOn), desc(clip.createdAtMs), desc(clip.id))
    .limit(MAX_EARLIER);
  return rows.flatMap(({ roundId, part, ...row }) =>
    roundId === null || part === null ? [] : [{ ...row, roundId, part }],
  );
}

/** Whole microseconds: far below a frame, and half as long on the wire. */
function timesOf(stored: string | null): number[] {
  if (stored === null) return [];
  return (JSON.parse(stored) as number[]).map((timeMs) => Math.round(timeMs * 1000) / 1000);
}
