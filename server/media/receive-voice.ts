import { randomBytes } from "node:crypto";
import { rm, writeFile } from "node:fs/promises";
import { judgeVoice, type VoiceRefusal } from "@/server/domain/reviews/voice-note";
import { clipPath, keepClipPart, makeClipFolder, newClipName } from "./clip-store";
import { copyVoice, type VoiceCopy } from "./copy-voice";

/** A recording that lies in its place, and what is to be written down of it. */
export interface StoredVoice {
  storageName: string;
  contentType: string;
  byteCount: number;
  sha256: string;
  durationMs: number;
}

/**
 * Judges a recording and stores its copy under a name that says nothing of whose it is. Nothing is stored of one that is
 * refused.
 * @throws the system's error when it cannot be written (a full disk)
 */
export async function storeVoice(
  recorded: Uint8Array,
  clipsFolder: string,
): Promise<StoredVoice | { refusal: VoiceRefusal }> {
  const copy = await copyVoice(recorded);
  if ("problem" in copy) return { refusal: copy.problem };
  const refusal = judgeVoice(copy.durationMs);
  if (refusal !== null) return { refusal };
  const storageName = newClipName();
  await write(copy, clipsFolder, storageName);
  const { bytes, contentType, durationMs, sha256 } = copy;
  return { storageName, contentType, byteCount: bytes.byteLength, sha256, durationMs };
}

async function write({ bytes }: VoiceCopy, clipsFolder: string, storageName: string): Promise<void> {
  await makeClipFolder(clipsFolder, storageName);
  const draft = `${clipPath(clipsFolder, storageName, "voice")}.${randomBytes(8).toString("hex")}`;
  try {
    await writeFile(draft, bytes, { mode: 0o600 });
    await keepClipPart(clipsFolder, storageName, "voice", draft);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}
