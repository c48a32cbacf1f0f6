import { and, eq, isNotNull, lte, ne, notExists, notInArray, type SQL, sql } from "drizzle-orm";
import { union } from "drizzle-orm/sqlite-core";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { correction } from "@/db/schema/corrections";
import { keep, review, voiceNote } from "@/db/schema/reviews";
import { draft, round } from "@/db/schema/rounds";

/**
 * Marks as gone every sent note whose film is no longer kept (of a keep on no clip: every film of its round) or that
 * nothing names any more, and every unsent one of before `leftOutBeforeMs` that no draft names.
 */
export async function expireVoices(tx: Db, leftOutBeforeMs: number): Promise<void> {
  const gone = { state: "gone" } as const;
  await tx
    .update(voiceNote)
    .set(gone)
    .where(and(eq(voiceNote.state, "sent"), notInArray(voiceNote.id, namedWithFilm(tx))));
  await tx
    .update(voiceNote)
    .set(gone)
    .where(
      and(
        eq(voiceNote.state, "waiting"),
        lte(voiceNote.createdAtMs, leftOutBeforeMs),
        notExists(draftNaming(tx)),
      ),
    );
}

const isKept = ne(clip.state, "expired");
const film = (tx: Db, of: SQL | undefined) => tx.select({ one: sql`1` }).from(clip).where(and(of, isKept));

function namedWithFilm(tx: Db) {
  const onCorrections = tx
    .select({ id: sql<string>`${correction.voiceId}`.as("id") })
    .from(correction)
    .innerJoin(clip, eq(clip.id, correction.clipId))
    .where(and(isNotNull(correction.voiceId), isKept));
  const ofTheRound = film(tx, eq(clip.roundId, review.roundId));
  const onKeeps = tx
    .select({ id: sql<string>`${keep.voiceId}`.as("id") })
    .from(keep)
    .innerJoin(review, eq(review.id, keep.reviewId))
    .leftJoin(clip, eq(clip.id, keep.clipId))
    .where(
      and(
        isNotNull(keep.voiceId),
        sql`CASE WHEN ${keep.clipId} IS NULL THEN EXISTS ${ofTheRound} ELSE ${isKept} END`,
      ),
    );
  return union(onCorrections, onKeeps);
}

/** The draft that names a note, while the review can still be sent and there is a film that it would be heard over. */
function draftNaming(tx: Db) {
  return tx
    .select({ one: sql`1` })
    .from(draft)
    .innerJoin(round, eq(round.id, draft.roundId))
    .where(
      and(
        ...[eq(draft.roundId, voiceNote.roundId), eq(draft.kind, "review")],
        sql`${round.state} IN ('received', 'taken', 'retake')`,
        sql`instr(${draft.document}, ${voiceNote.id}) > 0`,
        sql`EXISTS ${film(tx, eq(clip.roundId, voiceNote.roundId))}`,
      ),
    );
}

/** Notes that are gone and whose recording is still there, by the name it is stored under. */
export async function recordingsToRemove(db: Db): Promise<{ voiceId: string; storageName: string }[]> {
  return db
    .select({ voiceId: voiceNote.id, storageName: voiceNote.storageName })
    .from(voiceNote)
    .where(and(eq(voiceNote.state, "gone"), ne(voiceNote.storageName, "")));
}

/** Forgets a recording that has been removed. A note that was never sent leaves no row behind. */
export async function forgetRecording(tx: Db, voiceId: string): Promise<void> {
  const isGone = and(eq(voiceNote.id, voiceId), eq(voiceNote.state, "gone"));
  await tx.update(voiceNote).set({ storageName: "" }).where(isGone);
  const named = (table: typeof keep | typeof correction) =>
    tx.select({ one: sql`1` }).from(table).where(eq(table.voiceId, voiceNote.id));
  await tx.delete(voiceNote).where(and(isGone, notExists(named(keep)), notExists(named(correction))));
}

/** Every name a recording is stored under. */
export async function recordingNames(db: Db): Promise<string[]> {
  const rows = await db
    .select({ storageName: voiceNote.storageName })
    .from(voiceNote)
    .where(ne(voiceNote.storageName, ""));
  return rows.map((row) => row.storageName);
}
