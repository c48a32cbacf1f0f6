import { clip } from "@/db/schema/clips";
import { athleteScope } from "@/server/data/access";
import { type ClipFilm, keepWaitingClip } from "@/server/data/clips";
import type { SendClipInput } from "@/server/domain/clips/send-clip";
import type { TestAcademy } from "./academy";

/** A second of film at 60 frames, as it is written down; there is no file behind it. */
export const FILM: ClipFilm = {
  storageName: "0".repeat(32),
  contentType: "video/mp4",
  byteCount: 1000,
  sha256: "a".repeat(64),
  durationMs: 1000,
  widthPx: 1280,
  heightPx: 720,
  rotationDeg: 0,
  codec: "avc1.42c01f",
  capturedFps: null,
  frameCount: 2,
  frameTimesMs: "[0,16.7]",
};

/** Three seconds of film at 60 frames a second, to be watched and judged; there is no file behind it. */
export const THREE_SECONDS = {
  storageName: "0123456789abcdef0123456789abcdef",
  contentType: "video/mp4",
  byteCount: 1000,
  sha256: "0".repeat(64),
  durationMs: 3000,
  widthPx: 640,
  heightPx: 360,
  rotationDeg: 0,
  codec: "avc1.42c01f",
  frameCount: 180,
  frameTimesMs: JSON.stringify(Array.from({ length: 180 }, (_, frame) => (frame * 1000) / 60)),
};

let uploads = 0;

/** A clip that `personId` has uploaded and not yet sent. @returns its id */
export async function addWaitingClip(
  { db, clock }: TestAcademy,
  athleteId: string,
  personId: string,
  film: Partial<ClipFilm> = {},
): Promise<string> {
  uploads += 1;
  const athlete = await athleteScope(db, athleteId);
  if (!athlete) throw new Error(`There is no athlete ${athleteId}.`);
  const storageName = uploads.toString(16).padStart(32, "0");
  const uploadId = uploads.toString(16).padStart(64, "0");
  return keepWaitingClip(db, {
    athlete,
    personId,
    uploadId,
    film: { ...FILM, storageName, ...film },
    nowMs: clock.ms,
  });
}

/** What a family says of a clip: twelve pitches from the open side on the test's own day, not on the log yet. */
export function said(clipId: string, changes: Partial<SendClipInput> = {}): SendClipInput {
  return {
    clipId,
    view: "open_side",
    pitchType: "fastball",
    pitchesThrown: 12,
    alreadyOnLog: false,
    note: "",
    filmedOn: "2026-11-25",
    ...changes,
  };
}

/** Every clip, as it is kept. */
export const allClips = ({ db }: TestAcademy) => db.select().from(clip);
