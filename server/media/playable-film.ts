import { rm, stat } from "node:fs/promises";
import { isSameTable } from "@/server/domain/clips/conversion";
import { clipPath, keepClipPart, makeClipFolder } from "./clip-store";
import { probeClip } from "./probe-clip";
import { type ConverterOutcome, type Patience, runConverter } from "./run-converter";
import type { ServedFile } from "./serve-clip";
import { stripClip } from "./strip-clip";

/** A film that not every browser draws, as its record knows it. */
export interface FilmToCopy {
  storageName: string;
  durationMs: number;
  widthPx: number;
  heightPx: number;
  frameTimesMs: readonly number[];
}

/** The program that makes the copy, and how long it may take. */
export interface Converter {
  program: string;
  patience?: Patience;
}

/** What came of a copy; `another_film` when it does not show the same frames at the same times. */
export type CopyOutcome =
  | { made: true }
  | { made: false; why: ConverterOutcome["ended"] | "another_film"; said: string };

/**
 * Makes the copy of a film that every browser draws and keeps it beside the original, but only when it shows the same
 * frames at the same times, upright and of the same size: then a frame's number means the same picture in both. What is
 * left of an attempt that was cut off is overwritten by the next.
 * @throws the system's error when a file cannot be read or written
 */
export async function makePlayableFilm(
  clipsFolder: string,
  film: FilmToCopy,
  converter: Converter,
  onShare: (share: number) => void,
): Promise<CopyOutcome> {
  await makeClipFolder(clipsFolder, film.storageName);
  const to = `${clipPath(clipsFolder, film.storageName, "playable")}.converted`;
  const draft = `${clipPath(clipsFolder, film.storageName, "playable")}.draft`;
  const order = { ...film, from: clipPath(clipsFolder, film.storageName, "copy"), to };
  try {
    const { ended, said } = await runConverter(converter.program, order, onShare, converter.patience);
    if (ended !== "done") return { made: false, why: ended, said };
    const outcome = await stripClip(to, draft, await shiftOf(film, to));
    if (outcome.problem !== null || !isSameFilm(film, outcome.facts)) {
      return { made: false, why: "another_film", said };
    }
    await keepClipPart(clipsFolder, film.storageName, "playable", draft);
    return { made: true };
  } finally {
    await rm(to, { force: true });
    await rm(draft, { force: true });
  }
}

/** The program begins a film whose start is cut off at zero, also where its first whole frame comes a little later. */
async function shiftOf(film: FilmToCopy, converted: string): Promise<number> {
  const probe = await probeClip(converted);
  const firstMs = probe.problem === null ? probe.frameTimesMs[0] : undefined;
  return (film.frameTimesMs[0] ?? 0) - (firstMs ?? 0);
}

/** A picture whose size is odd loses or gains one row: the copy's format has even sizes alone. */
function isSameFilm(
  film: FilmToCopy,
  copy: { frameTimesMs: readonly number[]; widthPx: number; heightPx: number; rotationDeg: number },
): boolean {
  return (
    copy.rotationDeg === 0 &&
    Math.abs(copy.widthPx - film.widthPx) <= 1 &&
    Math.abs(copy.heightPx - film.heightPx) <= 1 &&
    isSameTable(film.frameTimesMs, copy.frameTimesMs)
  );
}

/** The file of a clip to send to a player: the copy that every browser draws where there is one, else the original. */
export async function filmToServe(
  clipsFolder: string,
  clip: {
    storageName: string;
    contentType: string;
    sha256: string;
    byteCount: number;
    conversion: string | null;
  },
): Promise<ServedFile> {
  const original = {
    path: clipPath(clipsFolder, clip.storageName, "copy"),
    contentType: clip.contentType,
    etag: clip.sha256,
    byteCount: clip.byteCount,
  };
  if (clip.conversion !== "made") return original;
  const path = clipPath(clipsFolder, clip.storageName, "playable");
  const copy = await stat(/* turbopackIgnore: true */ path).catch(() => null);
  if (copy === null) return original;
  return { path, contentType: "video/mp4", etag: `${clip.sha256}-playable`, byteCount: copy.size };
}
