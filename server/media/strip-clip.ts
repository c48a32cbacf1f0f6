import type { FileHandle } from "node:fs/promises";
import { open, rm } from "node:fs/promises";
import type { OutputFormat, StreamTargetChunk } from "mediabunny";
import { Mp4OutputFormat, Output, StreamTarget, WebMOutputFormat } from "mediabunny";
import { copyTracks } from "./copy-tracks";
import { withOpenClip } from "./open-clip";
import { type ClipFacts, type ClipProblem, isSystemError, probeClip } from "./probe-clip";
import { undatedMovie } from "./undated-movie";

/**
 * What came of making the copy that may be served.
 *
 * `problem` is that of the source where the source is no clip, or `not_copied` where its codec fits neither MP4
 * nor WebM or the copy did not show the same frames at the same times; `byteCount` is the source's. There is no file at
 * `to` then.
 */
export type StripOutcome =
  | { problem: null; contentType: "video/mp4" | "video/webm"; facts: ClipFacts }
  | { problem: ClipProblem | "not_copied"; byteCount: number };

/** WebM and MKV keep times in whole milliseconds; a copy may differ by that rounding and no more. */
const TIME_TOLERANCE_MS = 1;

/**
 * Copies the clip at `from` to `to` without re-encoding and without anything that tells of place, device, day or
 * name. Sound, turn, frame times and trimming are kept. MP4 and QuickTime become MP4 with its index in front;
 * WebM (and MKV with a WebM codec) becomes WebM. The copy is read back and compared before it counts, is on disk
 * when this returns, and is held in memory only a chunk at a time. `facts` are those of the copy. `shiftMs` moves all of
 * it in time.
 *
 * @throws the system's error when a file cannot be read or written (a full disk); nothing is left at `to`.
 */
export async function stripClip(from: string, to: string, shiftMs = 0): Promise<StripOutcome> {
  const source = await probeClip(from);
  if (source.problem !== null) return source;
  const isWebm = source.container === "webm" || /^(vp8|vp09|av01)/.test(source.codec);
  try {
    const isCopied = isWebm ? await copyWebm(from, to, shiftMs) : await copyMp4(from, to, shiftMs);
    const copy = isCopied ? await probeClip(to) : null;
    if (copy !== null && copy.problem === null && isSameClip(source, copy, shiftMs)) {
      return { problem: null, contentType: isWebm ? "video/webm" : "video/mp4", facts: copy };
    }
  } catch (error) {
    await rm(to, { force: true });
    if (isSystemError(error)) throw error;
  }
  await rm(to, { force: true });
  return { problem: "not_copied", byteCount: source.byteCount };
}

function isSameClip(source: ClipFacts, copy: ClipFacts, shiftMs: number): boolean {
  return (
    copy.tagNames.length === 0 &&
    copy.rotationDeg === source.rotationDeg &&
    copy.widthPx === source.widthPx &&
    copy.heightPx === source.heightPx &&
    copy.frameTimesMs.length === source.frameTimesMs.length &&
    copy.frameTimesMs.every(
      (timeMs, index) =>
        Math.abs(timeMs - shiftMs - (source.frameTimesMs[index] ?? Number.NaN)) <= TIME_TOLERANCE_MS,
    )
  );
}

const copyWebm = (from: string, to: string, shiftMs: number): Promise<boolean> =>
  writeFile(to, (file) => copyInto(from, new WebMOutputFormat(), file, shiftMs));

function copyMp4(from: string, to: string, shiftMs: number): Promise<boolean> {
  return writeFile(to, async (file) => {
    let movie: { bytes: Uint8Array; position: number } | null = null;
    const format = new Mp4OutputFormat({
      fastStart: "reserve",
      onMoov: (bytes, position) => {
        undatedMovie(bytes);
        movie = { bytes, position };
      },
    });
    const isCopied = await copyInto(from, format, file, shiftMs);
    if (movie !== null) await writeAll(file, movie);
    return isCopied;
  });
}

function copyInto(from: string, format: OutputFormat, file: FileHandle, shiftMs: number): Promise<boolean> {
  return withOpenClip(from, async (input) => {
    const writable = new WritableStream<StreamTargetChunk>({
      write: ({ data, position }) => writeAll(file, { bytes: data, position }),
    });
    const output = new Output({ format, target: new StreamTarget(writable, { chunked: true }) });
    try {
      return await copyTracks(input, output, shiftMs);
    } catch (error) {
      await output.cancel().catch(() => undefined); // the first error is the one that counts
      throw error;
    }
  });
}

/** Opens `to` for writing, and has it on disk and closed when `write` is done. */
async function writeFile<Result>(to: string, write: (file: FileHandle) => Promise<Result>): Promise<Result> {
  const file = await open(to, "w", 0o600);
  try {
    const result = await write(file);
    await file.sync();
    return result;
  } finally {
    await file.close();
  }
}

async function writeAll(file: FileHandle, chunk: { bytes: Uint8Array; position: number }): Promise<void> {
  let done = 0;
  while (done < chunk.bytes.byteLength) {
    const { bytesWritten } = await file.write(
      chunk.bytes,
      done,
      chunk.bytes.byteLength - done,
      chunk.position + done,
    );
    done += bytesWritten;
  }
}
