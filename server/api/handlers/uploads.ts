import { nowMs } from "@/server/clock";
import { athleteScope } from "@/server/data/access";
import { countWaiting } from "@/server/data/clips";
import { connections } from "@/server/data/connections";
import { consentIsLive } from "@/server/data/consents";
import { nameOfAthlete } from "@/server/data/names";
import { MAX_CLIP_BYTES } from "@/server/domain/clips/probe";
import { MAX_WAITING_CLIPS } from "@/server/domain/clips/send-clip";
import { Refusal } from "@/server/domain/errors/refusal";
import { env } from "@/server/env";
import { clipsFolder, reserveSet, uploadsFolder } from "@/server/media/media-folders";
import { receiveClip } from "@/server/media/receive-clip";
import { converterPath } from "@/server/media/run-converter";
import type { UploadMetadata } from "@/server/media/upload-folder";
import { UploadServer } from "@/server/media/upload-server";
import type { UploadAuthority } from "@/server/media/upload-settings";
import { guardRoute, type RouteScope } from "../guard-route";
import { faultResponse, refusalResponse } from "../refusal-response";

const held = globalThis as unknown as { slabsideUploads?: UploadServer };

/** The answer a sender gets in place of the upload server's own, where there is more to say. */
const answers = new WeakMap<Request, Response>();

/** Receives clips in pieces, for whoever may send clips of the athlete named in the upload's metadata. */
export async function receiveUpload(request: Request): Promise<Response> {
  try {
    const response = await uploadServer().handle(request);
    return answers.get(request) ?? response;
  } catch (error) {
    return faultResponse(error, "/api/uploads");
  }
}

/** Made on first use, once for the process. */
function uploadServer(): UploadServer {
  const reserve = reserveSet();
  held.slabsideUploads ??= new UploadServer({
    publicPath: "/api/uploads",
    baseDir: uploadsFolder(),
    maxBytes: MAX_CLIP_BYTES,
    ...(reserve ? { reserve } : {}),
    authorise: uploadAuthority,
    onFinished: async (upload) =>
      receiveClip(upload, {
        connections: connections(env.databasePath),
        clipsFolder: clipsFolder(),
        canConvert: (await converterPath(env.PATH)) !== null,
        nowMs: nowMs(),
      }),
  });
  return held.slabsideUploads;
}

/**
 * Without metadata there is no upload under way: the upload server then answers only the one who began it, and only
 * with what they were told before.
 */
async function uploadAuthority(
  request: Request,
  uploadId: string | null,
  metadata: UploadMetadata | null,
): Promise<UploadAuthority> {
  const isUnderWay = uploadId === null || metadata !== null;
  const scope = await guardRoute(
    request,
    isUnderWay
      ? { action: "clip.send", locate: (db) => athleteScope(db, metadata?.athleteId ?? "") }
      : { action: "account.own" },
  );
  if (scope instanceof Response) return turnAway(request, scope);
  const refusal = isUnderWay ? await sendingRefusal(scope, uploadId === null) : null;
  if (refusal) return turnAway(request, refusalResponse(refusal));
  return { ok: true, personId: scope.actor.personId };
}

async function sendingRefusal({ db, athlete }: RouteScope, isNew: boolean): Promise<Refusal | null> {
  if (!(await consentIsLive(db, athlete.athleteId, "video"))) {
    const { givenName } = await nameOfAthlete(db, athlete.athleteId);
    return new Refusal({ reason: "consent_missing", athleteGivenName: givenName });
  }
  const isFull = isNew && (await countWaiting(db, athlete.athleteId)) >= MAX_WAITING_CLIPS;
  return isFull ? new Refusal({ reason: "too_many_waiting", max: MAX_WAITING_CLIPS }) : null;
}

/** What is not there and what is not this caller's are answered alike: by the upload server itself. */
function turnAway(request: Request, answer: Response): UploadAuthority {
  if (answer.status === 404) return { ok: false, status: 404 };
  answers.set(request, answer);
  return { ok: false, status: answer.status === 401 ? 401 : 403 };
}
