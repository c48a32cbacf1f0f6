import type { Connections } from "@/db/client";
import { athleteScope } from "@/server/data/access";
import { type ClipFilm, clipOfUpload, keepWaitingClip } from "@/server/data/clips";
import { consentIsLive } from "@/server/data/consents";
import { unitOfWork } from "@/server/data/unit-of-work";
import type { ConversionState } from "@/server/domain/clips/clip";
import { drawnEverywhere } from "@/server/domain/clips/conversion";
import { judgeProbe, type ProbeRefusal, probeRefusalInWords } from "@/server/domain/clips/probe";
import { clipPath, keepClipPart, makeClipFolder, newClipName, removeClip, sha256OfFile } from "./clip-store";
import { probeClip } from "./probe-clip";
import { stripClip } from "./strip-clip";
import type { UploadAnswer } from "./upload-folder";
import type { FinishedUpload } from "./upload-settings";

/** Where a clip is received, and when. */
export interface ClipDesk {
  connections: Connections;
  clipsFolder: string;
  /** Whether this machine has the program that copies films not every browser draws. */
  canConvert: boolean;
  nowMs: number;
}

/**
 * Takes in a file that has arrived whole: judges it, makes the copy without place and device data, and keeps that copy
 * alone as a clip that waits to be sent. A file that is refused leaves nothing behind. An upload that was taken in
 * before (the server died before it could say so) is answered as then.
 */
export async function receiveClip(upload: FinishedUpload, desk: ClipDesk): Promise<UploadAnswer> {
  const before = await clipOfUpload(desk.connections.reader, upload.uploadId);
  if (before) return taken(before.id, before.conversion);
  const original = await probeClip(upload.path);
  const refusal = judgeProbe(original);
  if (refusal) return turnedDown(refusal);
  /* The copy has no tags left, and the rate that slow motion was recorded at is one. */
  const capturedFps = original.problem === null ? original.capturedFps : null;
  const storageName = newClipName();
  try {
    const film = await copyOf(upload.path, desk.clipsFolder, storageName);
    const answer = "kind" in film ? turnedDown(film) : await keep(upload, { ...film, capturedFps }, desk);
    if (answer.status >= 400) await removeClip(desk.clipsFolder, storageName);
    return answer;
  } catch (error) {
    await removeClip(desk.clipsFolder, storageName);
    throw error;
  }
}

/** Makes and keeps the copy, and says what it is; or why none could be made. */
async function copyOf(
  from: string,
  clipsFolder: string,
  storageName: string,
): Promise<ClipFilm | ProbeRefusal> {
  await makeClipFolder(clipsFolder, storageName);
  const draft = `${clipPath(clipsFolder, storageName, "copy")}.draft`;
  const outcome = await stripClip(from, draft);
  if (outcome.problem !== null) return { kind: outcome.problem };
  const path = await keepClipPart(clipsFolder, storageName, "copy", draft);
  const { byteCount, durationMs, widthPx, heightPx, rotationDeg, codec, capturedFps, frameTimesMs } =
    outcome.facts;
  return {
    ...{ storageName, contentType: outcome.contentType, byteCount, sha256: await sha256OfFile(path) },
    ...{ durationMs, widthPx, heightPx, rotationDeg, codec, capturedFps },
    ...{ frameCount: frameTimesMs.length, frameTimesMs: JSON.stringify(frameTimesMs) },
  };
}

async function keep(upload: FinishedUpload, film: ClipFilm, desk: ClipDesk): Promise<UploadAnswer> {
  const { personId, uploadId } = upload;
  const conversion = conversionOf(film.codec, desk.canConvert);
  return unitOfWork(desk.connections, async (tx) => {
    const athlete = await athleteScope(tx, upload.metadata.athleteId ?? "");
    if (!athlete || !(await consentIsLive(tx, athlete.athleteId, "video"))) return NOT_ALLOWED;
    const arrival = { athlete, personId, uploadId, film, conversion, nowMs: desk.nowMs };
    return taken(await keepWaitingClip(tx, arrival), conversion);
  });
}

function conversionOf(codec: string | null, canConvert: boolean): ConversionState | null {
  if (drawnEverywhere(codec ?? "")) return null;
  return canConvert ? "waiting" : "no_program";
}

const NOT_ALLOWED: UploadAnswer = {
  status: 403,
  body: {
    problem: "consent_missing",
    sentence: "Consent to video was withdrawn while the clip was on its way. Nothing was kept.",
  },
};

/** `conversion` is told where a copy is to be made, or cannot be, so that the sender hears of it while still there. */
const taken = (clipId: string, conversion: ConversionState | null): UploadAnswer => ({
  status: 201,
  body: { clipId, ...(conversion === null ? {} : { conversion }) },
});

const turnedDown = (refusal: ProbeRefusal): UploadAnswer => ({
  status: refusal.kind === "too_big" ? 413 : 422,
  body: { problem: refusal.kind, sentence: probeRefusalInWords(refusal) },
});
