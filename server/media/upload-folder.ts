import { readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** What the sender's page said about the file (a tus `Upload-Metadata` header), names to values. */
export type UploadMetadata = Record<string, string | null>;

/** An answer as it goes to the sender: a status and a JSON body. */
export type UploadAnswer = { status: number; body: Record<string, unknown> };

/** What is kept of an upload that was taken: enough to give its sender the same answer again. */
export type TakenUpload = { personId: string; byteCount: number; answer: UploadAnswer };

const ID_PATTERN = /^[0-9a-f]{64}$/;
const FILE_PATTERN = /^([0-9a-f]{64})(?:\.json|\.taken|\.taken\.part)?$/;

/** Whether `text` could be the id of an upload: 256 random bits in hex. */
export const isUploadId = (text: string): boolean => ID_PATTERN.test(text);

const takenPath = (baseDir: string, uploadId: string): string => join(baseDir, `${uploadId}.taken`);

/** The answer an upload was given when it was taken, or null when it was not, or not yet. */
export async function takenUpload(baseDir: string, uploadId: string): Promise<TakenUpload | null> {
  const text = await readFile(takenPath(baseDir, uploadId), "utf8").catch(nullWhenMissing);
  return text === null ? null : JSON.parse(text);
}

/** Notes that an upload was taken and removes its file, should it still lie here. */
export async function markTaken(baseDir: string, uploadId: string, taken: TakenUpload): Promise<void> {
  const part = `${takenPath(baseDir, uploadId)}.part`;
  await writeFile(part, JSON.stringify(taken), { flush: true });
  await rename(part, takenPath(baseDir, uploadId));
  await rm(join(baseDir, uploadId), { force: true });
  await rm(join(baseDir, `${uploadId}.json`), { force: true });
}

/** Removes everything kept of an upload; one that is already gone is no error. */
export async function removeUpload(baseDir: string, uploadId: string): Promise<void> {
  for (const ending of ["", ".json", ".taken", ".taken.part"]) {
    await rm(join(baseDir, uploadId + ending), { force: true });
  }
}

/**
 * Removes uploads nothing was written to for longer than `olderThanMs`: abandoned ones with their bytes, and the
 * notes of taken ones. Files that are no upload's are left alone.
 *
 * @returns how many uploads were removed; 0 when there is no such folder.
 */
export async function removeStaleUploads(
  baseDir: string,
  olderThanMs: number,
  nowMs: number,
): Promise<number> {
  const touchedAtMs = new Map<string, number>();
  for (const name of (await readdir(baseDir).catch(nullWhenMissing)) ?? []) {
    const uploadId = FILE_PATTERN.exec(name)?.[1];
    if (uploadId === undefined) continue;
    const file = await stat(join(baseDir, name)).catch(nullWhenMissing);
    touchedAtMs.set(uploadId, Math.max(touchedAtMs.get(uploadId) ?? 0, file?.mtimeMs ?? 0));
  }
  const stale = [...touchedAtMs].filter(([, atMs]) => nowMs - atMs > olderThanMs);
  for (const [uploadId] of stale) await removeUpload(baseDir, uploadId);
  return stale.length;
}

/** Bytes that uploads under way have announced and not yet sent; they are spoken for on the disk. */
export async function outstandingBytes(baseDir: string): Promise<number> {
  let total = 0;
  for (const name of await readdir(baseDir)) {
    if (!name.endsWith(".json") || !FILE_PATTERN.test(name)) continue;
    const text = await readFile(join(baseDir, name), "utf8").catch(nullWhenMissing);
    const file = await stat(join(baseDir, name.slice(0, -".json".length))).catch(nullWhenMissing);
    if (text !== null && file !== null) total += Math.max(0, announcedBytes(text) - file.size);
  }
  return total;
}

/** The announced size in an upload's note; 0 for a note that is only half written. */
function announcedBytes(text: string): number {
  try {
    const { size } = JSON.parse(text);
    return Number.isSafeInteger(size) ? size : 0;
  } catch {
    return 0;
  }
}

/** For `catch`: a file that is not there is null; anything else stays an error. */
function nullWhenMissing(error: unknown): null {
  if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
  throw error;
}
