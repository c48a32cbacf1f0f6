import { and, count, eq, inArray, notInArray } from "drizzle-orm";
import type { Db } from "@/db/client";
import { voiceNote } from "@/db/schema/reviews";
import type { AthleteScope } from "@/server/domain/access/relation";
import { athleteScope } from "./access";
import { newId } from "./new-id";

/** A spoken note as it is kept. Lengths in milliseconds, instants in epoch milliseconds. */
export type VoiceNote = typeof voiceNote.$inferSelect;

/** A spoken note, or null when there is none by that id. */
export async function findVoice(db: Db, voiceId: string): Promise<VoiceNote | null> {
  const [row] = await db.select().from(voiceNote).where(eq(voiceNote.id, voiceId));
  return row ?? null;
}

/** What access needs of the athlete a spoken note is about, or null when there is no such note. */
export async function voiceScope(db: Db, voiceId: string): Promise<AthleteScope | null> {
  const row = await findVoice(db, voiceId);
  return row ? athleteScope(db, row.athleteId) : null;
}

/** Keeps a note that has just been spoken and waits for its review to be sent. @returns its id */
export async function keepWaitingVoice(
  tx: Db,
  spoken: Omit<VoiceNote, "id" | "state" | "createdAtMs">,
  nowMs: number,
): Promise<string> {
  const id = newId("voi");
  await tx.insert(voiceNote).values({ ...spoken, id, state: "waiting", createdAtMs: nowMs });
  return id;
}

/** How many spoken notes wait on a round, whoever spoke them. */
export async function countWaitingVoices(db: Db, roundId: string): Promise<number> {
  const [row] = await db
    .select({ total: count() })
    .from(voiceNote)
    .where(and(eq(voiceNote.roundId, roundId), eq(voiceNote.state, "waiting")));
  return row?.total ?? 0;
}

/** The notes a coach has spoken on a round that wait to be sent. */
export async function waitingVoices(db: Db, roundId: string, coachPersonId: string): Promise<string[]> {
  const rows = await db
    .select({ id: voiceNote.id })
    .from(voiceNote)
    .where(
      and(
        ...[eq(voiceNote.roundId, roundId), eq(voiceNote.coachPersonId, coachPersonId)],
        eq(voiceNote.state, "waiting"),
      ),
    );
  return rows.map((row) => row.id);
}

/** Sends the notes that a review names; every other one that waits on its round is gone. */
export async function sendVoices(tx: Db, roundId: string, named: readonly string[]): Promise<void> {
  const waiting = and(eq(voiceNote.roundId, roundId), eq(voiceNote.state, "waiting"));
  await tx
    .update(voiceNote)
    .set({ state: "gone" })
    .where(and(waiting, notInArray(voiceNote.id, [...named])));
  await tx.update(voiceNote).set({ state: "sent" }).where(waiting);
}

/** Of some notes those that the family can still hear. */
export async function voicesToHear(db: Db, voiceIds: readonly string[]): Promise<string[]> {
  const rows = await db
    .select({ id: voiceNote.id })
    .from(voiceNote)
    .where(and(inArray(voiceNote.id, [...voiceIds]), eq(voiceNote.state, "sent")));
  return rows.map((row) => row.id);
}
