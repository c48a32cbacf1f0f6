import { stat } from "node:fs/promises";
import type { EncodedPacket, Input, InputTrack, InputVideoTrack, MetadataTags } from "mediabunny";
import { EncodedPacketSink, MATROSKA, QTFF, WEBM } from "mediabunny";
import { containerExtent } from "./container-extent";
import { withOpenClip } from "./open-clip";

/**
 * Why a file is no clip.
 *
 * - `empty`: no bytes at all.
 * - `not_video`: not MP4, QuickTime, WebM or Matroska, or without a video track of a known codec.
 * - `cut_off`: the file ends before the place where it says it does.
 * - `no_frames`: a video track that shows nothing.
 * - `too_many_frames`: more frames than `MAX_FRAMES`; reading stopped there.
 */
export const CLIP_PROBLEMS = ["empty", "not_video", "cut_off", "no_frames", "too_many_frames"] as const;
export type ClipProblem = (typeof CLIP_PROBLEMS)[number];

/** What is known of a readable clip. Times are float milliseconds from the start of the shown clip. */
export type ClipFacts = {
  container: "mp4" | "mov" | "webm" | "mkv";
  byteCount: number;
  /** End of the last frame or the last sound, whichever is later, as a player shows it. */
  durationMs: number;
  /** One entry a shown frame, ascending. Frames trimmed off before zero are left out. */
  frameTimesMs: number[];
  /** Indexes into `frameTimesMs` of the frames a player can start at. */
  keyFrameIndexes: number[];
  /** Size as shown: after rotation and pixel shape. */
  widthPx: number;
  heightPx: number;
  /** Clockwise turn from the stored picture to the shown one. */
  rotationDeg: 0 | 90 | 180 | 270;
  /** The full codec string, such as `avc1.42c01f`. */
  codec: string;
  /** The rate a slow-motion phone says it recorded at, frames a second; null where the file does not say. */
  capturedFps: number | null;
  hasSound: boolean;
  /** Names of the descriptive tags the file carries (title, place, device ...); empty for a stripped copy. */
  tagNames: string[];
};

export type ClipProbe = ({ problem: null } & ClipFacts) | { problem: ClipProblem; byteCount: number };

/** Three minutes at 480 frames a second are 86,400; no source, a bound against hostile tables. */
export const MAX_FRAMES = 100_000;

/** Android's camera writes the captured rate here (android.media.MediaRecorder.setCaptureRate, from memory). */
const CAPTURE_RATE_TAG = "com.android.capture.fps";

/**
 * Reads what the file at `path` holds without decoding a picture. A file that is no clip is an answer, not an
 * error. Memory stays bounded whatever the file's size.
 *
 * @throws the system's error when the file cannot be opened or read.
 */
export async function probeClip(path: string): Promise<ClipProbe> {
  const byteCount = (await stat(path)).size;
  const outcome = await readClip(path, byteCount);
  return typeof outcome === "string" ? { problem: outcome, byteCount } : { problem: null, ...outcome };
}

async function readClip(path: string, byteCount: number): Promise<ClipFacts | ClipProblem> {
  if (byteCount === 0) return "empty";
  const extent = await containerExtent(path);
  if (extent.family === "unknown") return "not_video";
  if (extent.declaredBytes > byteCount) return "cut_off";
  if (extent.family === "iso" && !extent.hasIndex) return "cut_off";
  try {
    return await withOpenClip(path, (input) => readInput(input, byteCount));
  } catch (error) {
    if (isSystemError(error)) throw error;
    return "not_video"; // the demuxer throws plain errors on tables it can make no sense of
  }
}

async function readInput(input: Input, byteCount: number): Promise<ClipFacts | ClipProblem> {
  const video = await input.getPrimaryVideoTrack();
  const codec = (await video?.getCodecParameterString()) ?? null;
  if (video === null || codec === null) return "not_video";
  const sound = await input.getPrimaryAudioTrack();
  const frames = await readFrames(video);
  if (typeof frames === "string") return frames;
  if (sound !== null && !(await canReadLast(sound, await listedPackets(sound)))) return "cut_off";
  const tags = await input.getMetadataTags();
  return {
    ...frames,
    container: await containerOf(input),
    byteCount,
    durationMs: (await input.computeDuration(sound === null ? [video] : [video, sound])) * 1000,
    widthPx: await video.getDisplayWidth(),
    heightPx: await video.getDisplayHeight(),
    rotationDeg: await video.getRotation(),
    codec,
    capturedFps: capturedFps(tags),
    hasSound: sound !== null,
    tagNames: tagNames(tags),
  };
}

type Frames = Pick<ClipFacts, "frameTimesMs" | "keyFrameIndexes">;

async function readFrames(track: InputVideoTrack): Promise<Frames | ClipProblem> {
  const frames: { timeMs: number; isKey: boolean }[] = [];
  const packets = await listedPackets(track);
  if (packets.length > MAX_FRAMES) return "too_many_frames";
  for (const { timestamp, type } of packets) {
    if (timestamp >= 0) frames.push({ timeMs: timestamp * 1000, isKey: type === "key" });
  }
  if (frames.length === 0) return "no_frames";
  if (!(await canReadLast(track, packets))) return "cut_off";
  frames.sort((a, b) => a.timeMs - b.timeMs); // stored in decoding order
  return {
    frameTimesMs: frames.map((frame) => frame.timeMs),
    keyFrameIndexes: frames.flatMap((frame, index) => (frame.isKey ? [index] : [])),
  };
}

/** The packets a track lists, in decoding order and without their data; at most one more than `MAX_FRAMES`. */
async function listedPackets(track: InputTrack): Promise<EncodedPacket[]> {
  const listed: EncodedPacket[] = [];
  for await (const packet of new EncodedPacketSink(track).packets(undefined, undefined, {
    metadataOnly: true,
  })) {
    listed.push(packet);
    if (listed.length > MAX_FRAMES) break;
  }
  return listed;
}

/** A table may list packets whose bytes are not in the file; only reading the last of them shows it. */
async function canReadLast(track: InputTrack, listed: EncodedPacket[]): Promise<boolean> {
  const sink = new EncodedPacketSink(track);
  const before = listed.at(-2);
  try {
    const last = before === undefined ? await sink.getFirstPacket() : await sink.getNextPacket(before);
    return listed.length === 0 || last !== null;
  } catch (error) {
    if (isSystemError(error)) throw error;
    return false;
  }
}

async function containerOf(input: Input): Promise<ClipFacts["container"]> {
  const format = await input.getFormat();
  if (format === WEBM) return "webm";
  if (format === MATROSKA) return "mkv";
  return format === QTFF ? "mov" : "mp4";
}

function capturedFps(tags: MetadataTags): number | null {
  const value = tags.raw?.[CAPTURE_RATE_TAG];
  const fps = value instanceof Uint8Array ? bigEndianFloat(value) : Number(value ?? Number.NaN);
  return Number.isFinite(fps) && fps > 0 ? fps : null;
}

const bigEndianFloat = (bytes: Uint8Array): number =>
  bytes.byteLength === 4 ? Buffer.from(bytes).readFloatBE(0) : Number.NaN;

function tagNames({ raw, ...named }: MetadataTags): string[] {
  return [...Object.keys(named), ...Object.keys(raw ?? {})];
}

/** True for errors of the file system (no such file, disk failing), false for a demuxer's complaint. */
export function isSystemError(error: unknown): boolean {
  return error instanceof Error && "syscall" in error;
}
