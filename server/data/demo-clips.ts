import { and, eq } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";

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

/** The clips of the demo that are still to be drawn, by id. */
export async function clipsToDraw(db: Db): Promise<Set<string>> {
  const rows = await db.select({ id: clip.id }).from(clip).where(eq(clip.state, "drawing"));
  return new Set(rows.map((row) => row.id));
}
