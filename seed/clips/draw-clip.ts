import { rename, writeFile } from "node:fs/promises";
import { type FrameArtist, frameArtist } from "./clip-frames";
import type { ClipParameters } from "./clip-parameters";
import { encodeClip } from "./encode-clip";
import { type ClipTruth, truthOf } from "./truth";

/** The files of one clip: the video and, beside it under the same name, its poster and the truth about it. */
export type ClipFiles = { readonly clip: string; readonly poster: string; readonly truth: string };

/**
 * The three paths of a clip.
 * @param outPath path of the video, ending in .mp4
 * @example clipFiles("a/b.mp4").poster // "a/b.jpg"
 * @throws RangeError for any other ending
 */
export function clipFiles(outPath: string): ClipFiles {
  if (!outPath.endsWith(".mp4")) throw new RangeError("a clip's path ends in .mp4");
  const stem = outPath.slice(0, -".mp4".length);
  return { clip: outPath, poster: `${stem}.jpg`, truth: `${stem}.json` };
}

/**
 * Draws a clip and writes its video, its poster (the frame at peak knee height) and its truth. Each file appears whole or
 * not at all, the video last; existing ones are replaced. The folder must be there.
 * @returns the truth about the clip
 */
export async function drawClip(parameters: ClipParameters, outPath: string): Promise<ClipTruth> {
  const files = clipFiles(outPath);
  const truth = truthOf(parameters);
  const artist = frameArtist(parameters);
  await writeWhole(files.truth, JSON.stringify(truth));
  await writeWhole(files.poster, await artist(truth.events.peak_knee_height).encode("jpeg", 84));
  await writeWhole(
    files.clip,
    await encodeClip({ ...truth, frameCount: truth.frames.length }, pixelsBy(artist)),
  );
  return truth;
}

function pixelsBy(artist: FrameArtist): (frame: number) => Uint8Array {
  return (frame) => new Uint8Array(artist(frame).data());
}

async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  const partial = `${path}.partial`;
  await writeFile(partial, content);
  await rename(partial, path);
}
