import { createHash, randomBytes } from "node:crypto";
import { createReadStream } from "node:fs";
import { mkdir, open, rename, rm, statfs } from "node:fs/promises";
import { dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";

/**
 * What is kept of one clip: the copy without metadata, where that is not drawn by every browser another that is
 * (`playable`), and its still picture. A spoken note is kept alone.
 */
export type ClipPart = "copy" | "playable" | "poster" | "voice";

const NAME_PATTERN = /^[0-9a-f]{32}$/;

/** A new opaque name for a clip: 128 random bits in hex. It says nothing of whose clip it is. */
export const newClipName = (): string => randomBytes(16).toString("hex");

/**
 * Where a part of the clip called `name` lies: `<baseDir>/<first two letters>/<name>/<part>`.
 *
 * @throws RangeError for a name that `newClipName` could not have made, so that no name can leave `baseDir`.
 */
export const clipPath = (baseDir: string, name: string, part: ClipPart): string =>
  join(clipFolder(baseDir, name), part);

function clipFolder(baseDir: string, name: string): string {
  if (!NAME_PATTERN.test(name)) throw new RangeError("A clip name is 32 hexadecimal digits.");
  return join(baseDir, name.slice(0, 2), name);
}

/** Makes the folder of the clip called `name`, so that a part can be written straight to its place. */
export async function makeClipFolder(baseDir: string, name: string): Promise<void> {
  await mkdir(clipFolder(baseDir, name), { recursive: true, mode: 0o700 });
}

/**
 * Moves the file at `from` to its place as a part of the clip called `name` and returns the new path. It is there
 * whole or not at all, also after a power cut; an earlier file of that part is replaced. `from` must lie on the
 * same file system.
 *
 * @throws the system's error (`ENOENT` when `from` is gone, `EXDEV` when it lies on another file system).
 */
export async function keepClipPart(
  baseDir: string,
  name: string,
  part: ClipPart,
  from: string,
): Promise<string> {
  const to = clipPath(baseDir, name, part);
  await makeClipFolder(baseDir, name);
  await sync(from);
  await rename(from, to);
  for (const folder of [dirname(to), dirname(dirname(to)), baseDir]) await sync(folder);
  return to;
}

async function sync(path: string): Promise<void> {
  const handle = await open(path, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Removes every part of the clip called `name`; a clip that is already gone is no error. */
export async function removeClip(baseDir: string, name: string): Promise<void> {
  await rm(clipFolder(baseDir, name), { recursive: true, force: true });
}

/** Bytes on the disk that clips must leave free, so that records can always be written. */
export type Reserve = { fraction: number; atMostBytes: number };

/** A tenth of the disk, at most 5 GB; common practice, no source. */
export const DEFAULT_RESERVE: Reserve = { fraction: 0.1, atMostBytes: 5_000_000_000 };

/** The reserve in bytes on a disk of `diskBytes`: `reservedBytes(20e9)` is 2e9, `reservedBytes(1e12)` is 5e9. */
export const reservedBytes = (diskBytes: number, reserve: Reserve = DEFAULT_RESERVE): number =>
  Math.min(Math.floor(diskBytes * reserve.fraction), reserve.atMostBytes);

/**
 * Whether `neededBytes` more can be written under `folder` (which must exist) with the reserve still free
 * afterwards. Exactly the reserve left counts as room.
 */
export async function hasRoomFor(
  folder: string,
  neededBytes: number,
  reserve: Reserve = DEFAULT_RESERVE,
): Promise<boolean> {
  const disk = await statfs(folder);
  const freeBytes = disk.bavail * disk.bsize;
  return freeBytes - neededBytes >= reservedBytes(disk.blocks * disk.bsize, reserve);
}

/** SHA-256 of the file at `path` in hex, read as a stream. */
export async function sha256OfFile(path: string): Promise<string> {
  const hash = createHash("sha256");
  await pipeline(createReadStream(path), hash);
  return hash.digest("hex");
}
