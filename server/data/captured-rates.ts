import { and, eq, inArray, isNull } from "drizzle-orm";
import type { Db } from "@/db/client";
import { clip } from "@/db/schema/clips";
import { capturedFpsSaid, type FilmedSpeed } from "@/server/domain/clips/capture-rate";
import type { CaptureSource } from "@/server/domain/clips/clip";

/** Notes for how fast clips were recorded what their sender says; a rate that the file itself names stays. */
export async function noteFilmedSpeed(tx: Db, clipIds: readonly string[], speed: FilmedSpeed): Promise<void> {
  const rows = await tx
    .select({ id: clip.id, frameTimesMs: clip.frameTimesMs })
    .from(clip)
    .where(and(inArray(clip.id, [...clipIds]), isNull(clip.capturedFps)));
  for (const { id, frameTimesMs } of rows) {
    const capturedFps = capturedFpsSaid(speed, JSON.parse(frameTimesMs ?? "[]") as number[]);
    if (capturedFps !== null) await setCapturedRate(tx, id, capturedFps, "sender");
  }
}

/** Sets how fast a clip was recorded, in frames a second, and who says so; null takes it back to nobody knows. */
export async function setCapturedRate(
  tx: Db,
  clipId: string,
  capturedFps: number | null,
  says: CaptureSource,
): Promise<void> {
  await tx
    .update(clip)
    .set({ capturedFps, captureSource: capturedFps === null ? null : says })
    .where(eq(clip.id, clipId));
}
