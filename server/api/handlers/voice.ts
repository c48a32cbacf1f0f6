import { mkdir } from "node:fs/promises";
import { roundScope } from "@/server/data/rounds";
import { unitOfWork } from "@/server/data/unit-of-work";
import { countWaitingVoices, findVoice, keepWaitingVoice, voiceScope } from "@/server/data/voice-notes";
import { Refusal } from "@/server/domain/errors/refusal";
import { MAX_VOICE_BYTES, MAX_WAITING_VOICES, voiceRefusalInWords } from "@/server/domain/reviews/voice-note";
import { clipPath, hasRoomFor, removeClip } from "@/server/media/clip-store";
import { clipsFolder, reserveSet } from "@/server/media/media-folders";
import { type StoredVoice, storeVoice } from "@/server/media/receive-voice";
import { serveFile } from "@/server/media/serve-clip";
import { bodyWithin } from "../body-within";
import { answerRoute, type RouteScope } from "../guard-route";
import { refuseRequest } from "../request-guard";
import { roundToWrite } from "../reviews/round-parts";

/**
 * A spoken note, whole or in ranges: once it is sent to whoever may read the review, before that to the coach who spoke
 * it alone.
 */
export function voiceNote(request: Request, voiceId: string): Promise<Response> {
  const rule = { action: "review.read" as const, locate: (db: RouteScope["db"]) => voiceScope(db, voiceId) };
  return answerRoute(request, rule, async ({ db, actor }) => {
    const voice = await findVoice(db, voiceId);
    const isOwnWaiting = voice?.state === "waiting" && voice.coachPersonId === actor.personId;
    if (voice === null || !(voice.state === "sent" || isOwnWaiting))
      throw new Refusal({ reason: "not_found" });
    return serveFile(request, {
      path: clipPath(clipsFolder(), voice.storageName, "voice"),
      contentType: voice.contentType,
      etag: voice.sha256,
      byteCount: voice.byteCount,
    });
  });
}

/** Takes a note that the coach has just spoken on a round whose review they are writing. */
export function keepVoiceNote(request: Request, roundId: string): Promise<Response> {
  const rule = { action: "review.write" as const, locate: (db: RouteScope["db"]) => roundScope(db, roundId) };
  return answerRoute(request, rule, async (scope) => {
    await roundToWrite(scope, roundId, "review");
    if ((await countWaitingVoices(scope.db, roundId)) >= MAX_WAITING_VOICES) return refuseRequest(409, FULL);
    const recorded = await bodyWithin(request, MAX_VOICE_BYTES);
    if (recorded === null) return refuseRequest(413, voiceRefusalInWords("too_big"));
    await mkdir(clipsFolder(), { recursive: true, mode: 0o700 });
    if (!(await hasRoomFor(clipsFolder(), recorded.byteLength, reserveSet())))
      throw new Refusal({ reason: "disk_full" });
    const stored = await storeVoice(recorded, clipsFolder());
    if ("refusal" in stored) return refuseRequest(422, voiceRefusalInWords(stored.refusal));
    return Response.json(
      { voiceId: await keep(scope, roundId, stored), durationMs: stored.durationMs },
      { status: 201, headers: { "cache-control": "no-store" } },
    );
  });
}

const FULL = `${MAX_WAITING_VOICES} spoken notes wait on this round already. Those left out are cleared within a day.`;

async function keep(scope: RouteScope, roundId: string, stored: StoredVoice): Promise<string> {
  const { actor, athlete, nowMs } = scope;
  const of = { roundId, athleteId: athlete.athleteId, coachPersonId: actor.personId };
  try {
    return await unitOfWork(scope.connections, async (tx) => {
      await roundToWrite({ ...scope, db: tx }, roundId, "review");
      return keepWaitingVoice(tx, { ...stored, ...of }, nowMs);
    });
  } catch (error) {
    await removeClip(clipsFolder(), stored.storageName);
    throw error;
  }
}
