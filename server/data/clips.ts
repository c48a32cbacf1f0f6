import { and, asc, count, desc, eq, inArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip, clipView } from "@/db/schema/clips";
import type { AthleteScope } from "@/server/domain/access/relation";
import type { ClipPart, ConversionState } from "@/server/domain/clips/clip";
import { retainUntil, type SendClipInput } from "@/server/domain/clips/send-clip";
import { dayOf } from "@/server/domain/time/calendar-day";
import { findSettings } from "./academy-settings";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A clip as it is kept. */
export type Clip = typeof clip.$inferSelect;

/** What the film of a clip is, read from the copy that is kept. */
export type ClipFilm = Required<
  Pick<
    typeof clip.$inferInsert,
    | "storageName"
    | "contentType"
    | "byteCount"
    | "sha256"
    | "durationMs"
    | "widthPx"
    | "heightPx"
    | "rotationDeg"
    | "codec"
    | "capturedFps"
    | "frameCount"
    | "frameTimesMs"
  >
>;

/** A clip, or null when there is none by that id. */
export async function findClip(db: Db, clipId: string): Promise<Clip | null> {
  const [row] = await db.select().from(clip).where(eq(clip.id, clipId));
  return row ?? null;
}

/** What access needs of the athlete a clip shows, or null when there is no such clip. */
export async function clipScope(db: Db, clipId: string): Promise<AthleteScope | null> {
  const row = await findClip(db, clipId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** The clip that came of an upload, or null when none did. */
export async function clipOfUpload(db: Db, uploadId: string): Promise<Clip | null> {
  const [row] = await db.select().from(clip).where(eq(clip.uploadId, uploadId));
  return row ?? null;
}

/** Keeps a clip that has just come in and waits to be sent with a round. @returns its id */
export async function keepWaitingClip(
  tx: Db,
  arrival: {
    athlete: AthleteScope;
    personId: string;
    uploadId: string;
    film: ClipFilm;
    /** Whether a copy that every browser draws is to be made; left out, none is needed. */
    conversion?: ConversionState | null;
    nowMs: number;
  },
): Promise<string> {
  const { athlete, personId, uploadId, film, conversion = null, nowMs } = arrival;
  const settings = await findSettings(tx);
  if (!settings) throw new Error("There is no academy yet.");
  const id = newId("clp");
  await tx.insert(clip).values({
    ...film,
    id,
    athleteId: athlete.athleteId,
    state: "waiting",
    conversion,
    captureSource: film.capturedFps === null ? null : "file",
    uploadId,
    uploadedByPersonId: personId,
    createdAtMs: nowMs,
    retainUntil: retainUntil(dayOf(nowMs, athlete.zone), settings.clipRetentionDays),
  });
  return id;
}

/** The clips of an athlete that a person has uploaded and not yet sent, in the order they came. */
export async function waitingClips(db: Db, athleteId: string, personId: string): Promise<Clip[]> {
  return db
    .select()
    .from(clip)
    .where(
      and(eq(clip.athleteId, athleteId), eq(clip.state, "waiting"), eq(clip.uploadedByPersonId, personId)),
    )
    .orderBy(asc(clip.createdAtMs), asc(clip.id));
}

/** How many clips of an athlete wait to be sent, whoever uploaded them. */
export async function countWaiting(db: Db, athleteId: string): Promise<number> {
  const [row] = await db
    .select({ total: count() })
    .from(clip)
    .where(and(eq(clip.athleteId, athleteId), eq(clip.state, "waiting")));
  return row?.total ?? 0;
}

/** Puts waiting clips into a round with what the family says of each, in the order given. */
export async function putClipsIntoRound(
  tx: Db,
  roundId: string,
  part: ClipPart,
  clips: readonly SendClipInput[],
): Promise<void> {
  for (const [position, { clipId, note, ...said }] of clips.entries()) {
    await tx
      .update(clip)
      .set({ ...said, note: note || null, roundId, part, position, state: "ready" })
      .where(and(eq(clip.id, clipId), eq(clip.state, "waiting")));
  }
}

/** Marks the clips of one part of a round as replaced: a retake has come. */
export async function replaceClips(tx: Db, roundId: string, part: ClipPart): Promise<void> {
  await tx
    .update(clip)
    .set({ state: "replaced" })
    .where(and(eq(clip.roundId, roundId), eq(clip.part, part), inArray(clip.state, ["ready", "drawing"])));
}

/** Takes back a clip that was uploaded and not sent; its film goes with the next clean-up. */
export async function discardWaitingClip(tx: Db, clipId: string): Promise<void> {
  await tx
    .update(clip)
    .set({ state: "expired" })
    .where(and(eq(clip.id, clipId), eq(clip.state, "waiting")));
}

/** Notes that a clip has a still picture. @returns false when it had one already */
export async function notePoster(tx: Db, clipId: string): Promise<boolean> {
  const noted = await tx
    .update(clip)
    .set({ hasPoster: true })
    .where(and(eq(clip.id, clipId), eq(clip.hasPoster, false)))
    .returning({ id: clip.id });
  return noted.length === 1;
}

/** When a person last opened a clip of an athlete who is not theirs, or null. */
export async function lastViewAtMs(db: Db, clipId: string, personId: string): Promise<number | null> {
  const [row] = await db
    .select({ atMs: clipView.atMs })
    .from(clipView)
    .where(and(eq(clipView.clipId, clipId), eq(clipView.personId, personId)))
    .orderBy(desc(clipView.atMs))
    .limit(1);
  return row?.atMs ?? null;
}

/** Notes that a person opened a clip. */
export async function noteView(tx: Db, clipId: string, personId: string, atMs: number): Promise<void> {
  await tx.insert(clipView).values({ id: newId("cvw"), clipId, personId, atMs });
}
