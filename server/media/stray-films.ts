import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { removeClip } from "./clip-store";

const NAME_PATTERN = /^[0-9a-f]{32}$/;

/**
 * Removes films that no record knows of: what a server that died in the middle of taking one in left behind. A film
 * younger than `olderThanMs` may be on its way into the records and is left alone, as is anything that is no film.
 * @returns how many were removed; 0 when there is no such folder
 */
export async function removeStrayFilms(
  clipsFolder: string,
  known: ReadonlySet<string>,
  olderThanMs: number,
  nowMs: number,
): Promise<number> {
  let removed = 0;
  for (const prefix of await namesIn(clipsFolder)) {
    for (const name of await namesIn(join(clipsFolder, prefix))) {
      if (!NAME_PATTERN.test(name) || known.has(name)) continue;
      const { mtimeMs } = await stat(join(clipsFolder, prefix, name));
      if (nowMs - mtimeMs <= olderThanMs) continue;
      await removeClip(clipsFolder, name);
      removed += 1;
    }
  }
  return removed;
}

async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(/* turbopackIgnore: true */ folder);
  } catch (error) {
    const isGone =
      error instanceof Error && "code" in error && ["ENOENT", "ENOTDIR"].includes(String(error.code));
    if (isGone) return [];
    throw error;
  }
}
