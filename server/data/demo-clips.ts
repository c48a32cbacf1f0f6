import { and, asc, desc, eq, or } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { account, athlete, guardianship } from "@/db/schema/people";
import type { CaptureSource } from "@/server/domain/clips/clip";

/** What is known of a clip once its file is there. */
export interface DrawnClip {
  storageName: string;
  contentType: string;
  byteCount: number;
  sha256: string;
  durationMs: number;
  widthPx: number;
  heightPx: number;
  rotationDeg: number;
  codec: string;
  capturedFps: number | null;
  captureSource: CaptureSource;
  frameCount: number;
  /** JSON array of milliseconds. */
  frameTimesMs: string;
  hasPoster: boolean;
}

/** Makes a clip of the demo watchable; nothing happens when it is no longer waiting to be drawn. */
export async function markClipDrawn(tx: Db, clipId: string, drawn: DrawnClip): Promise<void> {
  await tx
    .update(clip)
    .set({ ...drawn, state: "ready" })
    .where(and(eq(clip.id, clipId), eq(clip.state, "drawing")));
}

/**
 * The clips of the demo that are still to be drawn, by id, in the order in which somebody will look for them: those of
 * families that can sign in first, then the latest.
 */
export async function clipsToDraw(db: Db): Promise<string[]> {
  const canSignIn = await db
    .selectDistinct({ athleteId: athlete.id })
    .from(athlete)
    .leftJoin(guardianship, eq(guardianship.athleteId, athlete.id))
    .innerJoin(
      account,
      or(eq(account.personId, athlete.personId), eq(account.personId, guardianship.guardianPersonId)),
    );
  const first = new Set(canSignIn.map((row) => row.athleteId));
  const rows = await db
    .select({ id: clip.id, athleteId: clip.athleteId })
    .from(clip)
    .where(eq(clip.state, "drawing"))
    .orderBy(desc(clip.createdAtMs), asc(clip.id));
  const inOrder = [
    ...rows.filter((row) => first.has(row.athleteId)),
    ...rows.filter((row) => !first.has(row.athleteId)),
  ];
  return inOrder.map((row) => row.id);
}
