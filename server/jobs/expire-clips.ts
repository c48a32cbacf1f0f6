import type { Connections } from "@/db/client";
import {
  expirePastRetention,
  expireUnsent,
  filmsToRemove,
  forgetFilm,
  storedNames,
} from "@/server/data/clip-retention";
import { unitOfWork } from "@/server/data/unit-of-work";
import { removeClip } from "@/server/media/clip-store";
import { clipsFolder, uploadsFolder } from "@/server/media/media-folders";
import { removeStrayFilms } from "@/server/media/stray-films";
import { removeStaleUploads } from "@/server/media/upload-folder";

/** Uploads that stand still and clips that are not sent are kept for a day. Common practice, no source. */
export const UNSENT_KEPT_MS = 86_400_000;

/**
 * Deletes the films whose time is over: past the academy's retention, uploaded and never sent, half sent and left. A
 * film is removed only once its record says so, and forgotten only once it is removed; cut off anywhere, the next run
 * goes on. What was written about a clip stays.
 */
export async function expireClips(on: Connections, nowMs: number): Promise<void> {
  await unitOfWork(on, async (tx) => {
    await expirePastRetention(tx, nowMs);
    await expireUnsent(tx, nowMs - UNSENT_KEPT_MS);
  });
  for (const { clipId, storageName } of await filmsToRemove(on.reader)) {
    await removeClip(clipsFolder(), storageName);
    await unitOfWork(on, (tx) => forgetFilm(tx, clipId));
  }
  await removeStrayFilms(clipsFolder(), await storedNames(on.reader), UNSENT_KEPT_MS, nowMs);
  await removeStaleUploads(uploadsFolder(), UNSENT_KEPT_MS, nowMs);
}
