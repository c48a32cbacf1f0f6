import { randomBytes } from "node:crypto";
import { rm, stat, writeFile } from "node:fs/promises";
import { clipScope, notePoster } from "@/server/data/clips";
import { unitOfWork } from "@/server/data/unit-of-work";
import { Refusal } from "@/server/domain/errors/refusal";
import { clipPath, keepClipPart } from "@/server/media/clip-store";
import { clipsFolder } from "@/server/media/media-folders";
import { acceptPoster, MAX_POSTER_BYTES } from "@/server/media/poster";
import { serveFile } from "@/server/media/serve-clip";
import { bodyWithin } from "../body-within";
import { answerRoute, type RouteScope } from "../guard-route";
import { refuseRequest } from "../request-guard";
import { type WatchableClip, watchableClip } from "./watchable-clip";

/** The still picture of a clip. */
export function clipPoster(request: Request, clipId: string): Promise<Response> {
  const rule = { action: "clip.watch" as const, locate: (db: RouteScope["db"]) => clipScope(db, clipId) };
  return answerRoute(request, rule, async (scope) => {
    const clip = await watchableClip(scope, clipId);
    if (!clip.hasPoster) throw new Refusal({ reason: "not_found" });
    const path = clipPath(clipsFolder(), clip.storageName, "poster");
    const { size: byteCount } = await stat(path);
    return serveFile(request, { path, contentType: "image/jpeg", etag: `${clip.sha256}-poster`, byteCount });
  });
}

/** Takes the still picture that the sender's browser (or a coach's) drew; the first one stays. */
export function putClipPoster(request: Request, clipId: string): Promise<Response> {
  const rule = { action: "clip.poster" as const, locate: (db: RouteScope["db"]) => clipScope(db, clipId) };
  return answerRoute(request, rule, async (scope) => {
    const clip = await watchableClip(scope, clipId);
    if (!mayPicture(scope, clip)) throw new Refusal({ reason: "not_found" });
    if (clip.hasPoster) return refuseRequest(409, "This clip has its still picture already.");
    const bytes = await bodyWithin(request, MAX_POSTER_BYTES);
    const poster = bytes ? acceptPoster(bytes) : ({ problem: "too_large" } as const);
    if (poster.problem !== null) return refuseRequest(422, REFUSED[poster.problem]);
    await keepPoster(clip, poster.bytes);
    await unitOfWork(scope.connections, (tx) => notePoster(tx, clip.id));
    return new Response(null, { status: 204, headers: { "cache-control": "no-store" } });
  });
}

const REFUSED = {
  too_large: "The picture is too large.",
  not_jpeg: "That is not a JPEG picture.",
  cut_off: "The picture is cut off.",
};

/** The sender, or a coach. */
function mayPicture({ actor, relations }: RouteScope, clip: WatchableClip): boolean {
  const isCoach = relations.has("assigned_coach") || relations.has("other_coach");
  return isCoach || clip.uploadedByPersonId === actor.personId;
}

async function keepPoster(clip: WatchableClip, bytes: Uint8Array): Promise<void> {
  const draft = `${clipPath(clipsFolder(), clip.storageName, "poster")}.${randomBytes(8).toString("hex")}`;
  try {
    await writeFile(draft, bytes, { mode: 0o600 });
    await keepClipPart(clipsFolder(), clip.storageName, "poster", draft);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}
