import type { Connections } from "@/db/client";
import {
  expirePastRetention,
  expireUnsent,
  filmsToRemove,
  forgetFilm,
  storedNames,
} from "@/server/data/clip-retention";
import { unitOfWork } from "@/server/data/unit-of-work";
import {
  expireVoices,
  forgetRecording,
  recordingNames,
  recordingsToRemove,
} from "@/server/data/voice-retention";
import { removeClip } from "@/server/media/clip-store";
import { clipsFolder, uploadsFolder } from "@/server/media/media-folders";
import { removeStrayFilms } from "@/server/media/stray-films";
import { removeStaleUploads } from "@/server/media/upload-folder";

/** Uploads that stand still and clips that are not sent are kept for a day. Common practice, no source. */
export const UNSENT_KEPT_MS = 86_400_000;

/**
 * Deletes the films whose time is over: past the academy's retention, uploaded and never sent, half sent and left; and
 * with them what was spoken on them, and what was spoken and left out. A film or a recording is removed only once its
 * record says so, and forgotten only once it is removed; cut off anywhere, the next run goes on. What was written about
 * a clip stays.
 */
export async function expireClips(on: Connections, nowMs: number): Promise<void> {
  await unitOfWork(on, async (tx) => {
    await expirePastRetention(tx, nowMs);
    await expireUnsent(tx, nowMs - UNSENT_KEPT_MS);
    await expireVoices(tx, nowMs - UNSENT_KEPT_MS);
  });
  for (const { clipId, storageName } of await filmsToRemove(on.reader)) {
    await removeClip(clipsFolder(), storageName);
    await unitOfWork(on, (tx) => forgetFilm(tx, clipId));
  }
  for (const { voiceId, storageName } of await recordingsToRemove(on.reader)) {
    await removeClip(clipsFolder(), storageName);
    await unitOfWork(on, (tx) => forgetRecording(tx, voiceId));
  }
  const known = new Set([...(await storedNames(on.reader)), ...(await recordingNames(on.reader))]);
  await removeStrayFilms(clipsFolder(), known, UNSENT_KEPT_MS, nowMs);
  await removeStaleUploads(uploadsFolder(), UNSENT_KEPT_MS, nowMs);
}
