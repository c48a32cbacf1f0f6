import { readFileSync } from "node:fs";
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

/** A film in a codec not every browser draws, of a rate that wavers, with sound. How it was made: test/reference/README.md. */
export const hevcClip = (): Uint8Array =>
  new Uint8Array(readFileSync("test/reference/hevc-variable-rate.mp4"));

/** The same pictures turned, or with the start cut off by an edit list, or slowed, without sound. */
export async function hevcClipWith(
  change: { rotationDeg?: 0 | 90 | 180 | 270; trimMs?: number; slower?: number } = {},
): Promise<Uint8Array> {
  const { rotationDeg = 0, trimMs = 0, slower = 1 } = change;
  const input = new Input({ source: new BufferSource(hevcClip()), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  const decoderConfig = await track?.getDecoderConfig();
  if (!track || !decoderConfig) throw new Error("The reference film has no pictures.");
  const target = new BufferTarget();
  const output = new Output({ format: new Mp4OutputFormat({ fastStart: "in-memory" }), target });
  const source = new EncodedVideoPacketSource("hevc");
  output.addVideoTrack(source, { rotation: rotationDeg });
  await output.start();
  for await (const packet of new EncodedPacketSink(track).packets()) {
    const timestamp = packet.timestamp * slower - trimMs / 1000;
    await source.add(packet.clone({ timestamp, duration: packet.duration * slower }), { decoderConfig });
  }
  await output.finalize();
  input.dispose();
  if (target.buffer === null) throw new Error("The muxer wrote nothing.");
  return new Uint8Array(target.buffer);
}
