import { createCanvas } from "@napi-rs/canvas";
import {
  BufferSource,
  BufferTarget,
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

/** A drawn clip as a phone stores it that was held another way: its pictures are turned, and its metadata turns them upright. */
export async function turnedClip(
  parameters: ClipParameters,
  turn: Turn,
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
  return { file: await withTurn(file, turn), truth };
}

/** The same packets, told to be shown turned clockwise. */
async function withTurn(file: Uint8Array, turn: Turn): Promise<Uint8Array> {
  const input = new Input({ source: new BufferSource(file), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  const decoderConfig = await track?.getDecoderConfig();
  if (!track || !decoderConfig) throw new Error("The encoder wrote no video.");
  const target = new BufferTarget();
  const output = new Output({ format: new Mp4OutputFormat({ fastStart: "in-memory" }), target });
  const source = new EncodedVideoPacketSource("avc");
  output.addVideoTrack(source, { rotation: turn });
  await output.start();
  for await (const packet of new EncodedPacketSink(track).packets()) {
    await source.add(packet, { decoderConfig });
  }
  await output.finalize();
  input.dispose();
  if (target.buffer === null) throw new Error("The muxer wrote nothing.");
  return new Uint8Array(target.buffer);
}
