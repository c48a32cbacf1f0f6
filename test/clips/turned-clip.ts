import { createCanvas } from "@napi-rs/canvas";
import {
  BufferSource,
  BufferTarget,
  type EncodedPacket,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  Input,
  MP4,
  Mp4OutputFormat,
  Output,
} from "mediabunny";
import { frameArtist } from "../../seed/clips/clip-frames";
import type { ClipParameters } from "../../seed/clips/clip-parameters";
import { encodeClip } from "../../seed/clips/encode-clip";
import { type ClipTruth, truthOf } from "../../seed/clips/truth";
import type { Turn } from "./frame-pattern";

/**
 * A drawn clip as a phone stores it that was held another way: its pictures are turned, and its metadata turns them
 * upright. `timesOf` says when each of so many frames is shown; left out, they are evenly spaced.
 */
export async function turnedClip(
  parameters: ClipParameters,
  turn: Turn,
  timesOf?: (count: number) => readonly number[],
): Promise<{ file: Uint8Array; truth: ClipTruth }> {
  const truth = truthOf(parameters);
  const isAcross = turn % 180 !== 0;
  const size = {
    widthPx: isAcross ? parameters.heightPx : parameters.widthPx,
    heightPx: isAcross ? parameters.widthPx : parameters.heightPx,
  };
  const artist = frameArtist(parameters);
  const stored = createCanvas(size.widthPx, size.heightPx);
  const pen = stored.getContext("2d");
  const file = await encodeClip({ ...size, fps: truth.fps, frameCount: truth.frames.length }, (frame) => {
    pen.resetTransform();
    pen.translate(size.widthPx / 2, size.heightPx / 2);
    pen.rotate((-turn * Math.PI) / 180);
    pen.drawImage(artist(frame), -parameters.widthPx / 2, -parameters.heightPx / 2);
    return new Uint8Array(stored.data());
  });
  return { file: await withTurn(file, turn, timesOf?.(truth.frames.length)), truth };
}

/** The same packets, told to be shown turned clockwise, and at other times where some are given. */
async function withTurn(file: Uint8Array, turn: Turn, timesMs?: readonly number[]): Promise<Uint8Array> {
  const input = new Input({ source: new BufferSource(file), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  const decoderConfig = await track?.getDecoderConfig();
  if (!track || !decoderConfig) throw new Error("The encoder wrote no video.");
  const target = new BufferTarget();
  const output = new Output({ format: new Mp4OutputFormat({ fastStart: "in-memory" }), target });
  const source = new EncodedVideoPacketSource("avc");
  output.addVideoTrack(source, { rotation: turn });
  await output.start();
  let frame = 0;
  for await (const packet of new EncodedPacketSink(track).packets()) {
    await source.add(timesMs ? shownAt(packet, timesMs, frame) : packet, { decoderConfig });
    frame += 1;
  }
  await output.finalize();
  input.dispose();
  if (target.buffer === null) throw new Error("The muxer wrote nothing.");
  return new Uint8Array(target.buffer);
}

/** The last frame of a clip is shown as long as the one before it. */
function shownAt(packet: EncodedPacket, timesMs: readonly number[], frame: number): EncodedPacket {
  const at = timesMs[frame] ?? 0;
  const durationMs = (timesMs[frame + 1] ?? at) - at || at - (timesMs[frame - 1] ?? 0);
  return packet.clone({ timestamp: at / 1000, duration: durationMs / 1000 });
}
