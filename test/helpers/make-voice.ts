import type { MetadataTags, OutputFormat } from "mediabunny";
import {
  BufferTarget,
  EncodedAudioPacketSource,
  EncodedPacket,
  Mp4OutputFormat,
  Output,
  WebMOutputFormat,
} from "mediabunny";

/** How a test recording differs from a plain one. */
export type VoiceShape = {
  /** `webm` as most browsers record, without a length; `mp4` in fragments as others do. */
  container?: "webm" | "mp4";
  codec?: "opus" | "aac" | "mp3";
  lengthMs?: number;
  /** When the first packet says it begins. */
  beginsMs?: number;
  tags?: MetadataTags;
};

const PACKET_MS = 20;

/** What each codec needs written down before its first packet, and a packet of 20 ms as it might be. */
const SOUND = {
  opus: {
    config: { codec: "opus", sampleRate: 48_000, numberOfChannels: 1 },
    packet: Uint8Array.from([0x78, ...Array.from({ length: 60 }, (_, at) => (at * 37) % 256)]),
  },
  aac: {
    config: {
      ...{ codec: "mp4a.40.2", sampleRate: 48_000, numberOfChannels: 1 },
      description: Uint8Array.from([0x11, 0x88]),
    },
    packet: Uint8Array.from({ length: 80 }, (_, at) => (at * 29) % 256),
  },
  mp3: {
    config: { codec: "mp3", sampleRate: 48_000, numberOfChannels: 1 },
    packet: Uint8Array.from([0xff, 0xfb, 0x94, 0x00, ...Array.from({ length: 380 }, () => 0)]),
  },
} as const;

/** A recording in a real container, its packets those of one voice; nobody decodes them here. */
export async function makeVoice(shape: VoiceShape = {}): Promise<Uint8Array> {
  const { container = "webm", codec = container === "webm" ? "opus" : "aac", lengthMs = 3000 } = shape;
  const format: OutputFormat =
    container === "webm"
      ? new WebMOutputFormat({ appendOnly: true })
      : new Mp4OutputFormat({ fastStart: "fragmented" });
  const target = new BufferTarget();
  const output = new Output({ format, target });
  const source = new EncodedAudioPacketSource(codec);
  output.addAudioTrack(source);
  output.setMetadataTags(shape.tags ?? {});
  await output.start();
  const { config, packet } = SOUND[codec];
  for (let atMs = 0; atMs < lengthMs; atMs += PACKET_MS) {
    const timestamp = ((shape.beginsMs ?? 0) + atMs) / 1000;
    await source.add(new EncodedPacket(packet, "key", timestamp, PACKET_MS / 1000), {
      decoderConfig: config,
    });
  }
  await output.finalize();
  return new Uint8Array(target.buffer ?? []);
}
