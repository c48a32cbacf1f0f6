import { clipScope, lastViewAtMs, noteView } from "@/server/data/clips";
import { findRound } from "@/server/data/rounds";
import { unitOfWork } from "@/server/data/unit-of-work";
import { clipsFolder } from "@/server/media/media-folders";
import { filmToServe } from "@/server/media/playable-film";
import { serveFile } from "@/server/media/serve-clip";
import { answerRoute, type RouteScope } from "../guard-route";
import { type WatchableClip, watchableClip } from "./watchable-clip";

/** A player asks for a clip in many pieces; what comes within this time is one viewing. Common practice, no source. */
const ONE_VIEWING_MS = 600_000;

/** The film of a clip, whole or in ranges. Staff who open one of another coach's athlete are noted. */
export function clipVideo(request: Request, clipId: string): Promise<Response> {
  const rule = { action: "clip.watch" as const, locate: (db: RouteScope["db"]) => clipScope(db, clipId) };
  return answerRoute(request, rule, async (scope) => {
    const clip = await watchableClip(scope, clipId);
    if (request.method === "GET") await noteForeignView(scope, clip);
    return serveFile(request, await filmToServe(clipsFolder(), clip));
  });
}

const THEIRS = ["self_minor", "self_of_age", "guardian", "granted_guardian", "assigned_coach"] as const;

async function noteForeignView(scope: RouteScope, clip: WatchableClip): Promise<void> {
  const { db, actor, nowMs, relations } = scope;
  if (THEIRS.some((relation) => relations.has(relation))) return;
  const round = clip.roundId ? await findRound(db, clip.roundId) : null;
  if (round?.coachPersonId === actor.personId) return;
  const lastMs = await lastViewAtMs(db, clip.id, actor.personId);
  if (lastMs !== null && nowMs - lastMs < ONE_VIEWING_MS) return;
  await unitOfWork(scope.connections, (tx) => noteView(tx, clip.id, actor.personId, nowMs));
}
