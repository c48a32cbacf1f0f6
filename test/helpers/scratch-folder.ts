import { mkdtempSync, rmSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

/** A fresh folder for the files of one test file, removed when its tests are done. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "slabside-test-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

let written = 0;

/** Writes `bytes` as a new file in `folder` and returns its path. */
export async function writeScratch(folder: string, bytes: Uint8Array | string): Promise<string> {
  written += 1;
  const path = join(folder, `file-${written}`);
  await writeFile(path, bytes);
  return path;
}
