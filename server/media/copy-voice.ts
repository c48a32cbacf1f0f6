import { createHash } from "node:crypto";
import type { InputAudioTrack, OutputFormat } from "mediabunny";
import {
  BufferSource,
  BufferTarget,
  EncodedAudioPacketSource,
  EncodedPacketSink,
  Input,
  Logging,
  LogLevel,
  MATROSKA,
  MP4,
  Mp4OutputFormat,
  Output,
  QTFF,
  WEBM,
  WebMOutputFormat,
} from "mediabunny";
import type { VoiceProblem } from "@/server/domain/reviews/voice-note";
import { undatedMovie } from "./undated-movie";

// The library prints its doubts about a file to the console; what matters here comes back as a fact instead.
Logging.level = LogLevel.Silent;

/** A recording that may be served: its bytes, and what they are. */
export interface VoiceCopy {
  bytes: Uint8Array;
  contentType: "audio/webm" | "audio/mp4";
  durationMs: number;
  sha256: string;
}

/** What browsers record a voice in, and every browser of the last years can play. */
const CODECS: readonly string[] = ["opus", "aac"];

/**
 * Copies a recording without re-encoding: its sound alone, without anything that tells of place, device or day, and
 * with its length written down, which a browser that records does not know when it begins. WebM stays WebM, MP4 stays
 * MP4. It is held in memory whole: the caller has bounded its bytes.
 */
export async function copyVoice(bytes: Uint8Array): Promise<VoiceCopy | { problem: VoiceProblem }> {
  if (bytes.byteLength === 0) return { problem: "empty" };
  const input = openVoice(bytes);
  try {
    const sound = await onlySound(input);
    if (sound === null) return { problem: "not_voice" };
    const isMp4 = [MP4, QTFF].some((format) => format === sound.format);
    const copied = isMp4 ? await intoMp4(sound.track) : await intoWebm(sound.track);
    const durationMs = await lengthOf(copied);
    if (durationMs === null) return { problem: "not_copied" };
    return {
      bytes: copied,
      contentType: isMp4 ? "audio/mp4" : "audio/webm",
      durationMs,
      sha256: createHash("sha256").update(copied).digest("hex"),
    };
  } catch {
    return { problem: "not_voice" }; // the demuxer throws plain errors on bytes it can make no sense of
  } finally {
    input.dispose();
  }
}

const openVoice = (bytes: Uint8Array) =>
  new Input({ source: new BufferSource(bytes), formats: [WEBM, MATROSKA, MP4, QTFF] });

/** The one track of a recording; null where there are pictures too, several tracks, or a codec that is no browser's. */
async function onlySound(input: Input) {
  const tracks = await input.getTracks();
  const track = await input.getPrimaryAudioTrack();
  if (track === null || tracks.length !== 1) return null;
  return CODECS.includes((await track.getCodec()) ?? "") ? { track, format: await input.getFormat() } : null;
}

const intoWebm = (track: InputAudioTrack) => copyInto(track, new WebMOutputFormat());

async function intoMp4(track: InputAudioTrack): Promise<Uint8Array> {
  let movie = { from: 0, to: 0 };
  const format = new Mp4OutputFormat({
    fastStart: "in-memory",
    onMoov: (box, position) => {
      movie = { from: position, to: position + box.byteLength };
    },
  });
  const copied = await copyInto(track, format);
  undatedMovie(copied.subarray(movie.from, movie.to));
  return copied;
}

async function copyInto(track: InputAudioTrack, format: OutputFormat): Promise<Uint8Array> {
  const codec = await track.getCodec();
  const decoderConfig = await track.getDecoderConfig();
  if (codec === null || decoderConfig === null) throw new Error("A track that cannot be decoded.");
  const target = new BufferTarget();
  const output = new Output({ format, target });
  const source = new EncodedAudioPacketSource(codec);
  output.addAudioTrack(source);
  await output.start();
  const from = await track.getFirstTimestamp();
  for await (const packet of new EncodedPacketSink(track).packets()) {
    // A recorder counts from when it was made ready; what is heard begins with the first word.
    await source.add(packet.clone({ timestamp: packet.timestamp - from }), { decoderConfig });
  }
  await output.finalize();
  if (target.buffer === null) throw new Error("Nothing was written.");
  return new Uint8Array(target.buffer);
}

/** Reads a copy back: its length in milliseconds, or null where it carries anything that it should not. */
async function lengthOf(copied: Uint8Array): Promise<number | null> {
  const input = openVoice(copied);
  try {
    if ((await onlySound(input)) === null) return null;
    const { raw, ...named } = await input.getMetadataTags();
    if (Object.keys({ ...raw, ...named }).length > 0) return null;
    return (await input.computeDuration()) * 1000;
  } finally {
    input.dispose();
  }
}
