import { createCanvas } from "@napi-rs/canvas";
import h264 from "h264-mp4-encoder";
import type { MetadataTags, OutputFormat } from "mediabunny";
import {
  BufferSource,
  BufferTarget,
  EncodedAudioPacketSource,
  EncodedPacket,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  Input,
  MkvOutputFormat,
  MovOutputFormat,
  MP4,
  Mp4OutputFormat,
  Output,
  WebMOutputFormat,
} from "mediabunny";

/** How a test clip differs from a plain one. All pictures are 96 by 64 before rotation. */
export type ClipShape = {
  container?: "mp4" | "mov" | "mkv";
  /** Times of the frames in decoding order; the first is a key frame, then every tenth. */
  frameTimesMs?: number[];
  rotationDeg?: 0 | 90 | 180 | 270;
  index?: "front" | "end" | "fragments";
  hasSound?: boolean;
  tags?: MetadataTags;
  trackName?: string;
};

export const STORED_WIDTH_PX = 96;
export const STORED_HEIGHT_PX = 64;
export const KEY_FRAME_EVERY = 10;
const DRAWN_FRAMES = 40;

/** `count` evenly spaced times, by default at 60 frames a second. */
export const evenTimesMs = (count: number, stepMs = 1000 / 60): number[] =>
  Array.from({ length: count }, (_, index) => index * stepMs);

/** Real H.264 in a real container, made by drawing, encoding and copying the packets to the wanted times. */
export async function makeClip(shape: ClipShape = {}): Promise<Uint8Array> {
  const times = shape.frameTimesMs ?? evenTimesMs(30);
  const pictures = await encodedPictures();
  const output = new Output({ format: formatOf(shape), target: new BufferTarget() });
  const video = new EncodedVideoPacketSource("avc");
  output.addVideoTrack(video, { rotation: shape.rotationDeg ?? 0, name: shape.trackName });
  const sound = shape.hasSound ? new EncodedAudioPacketSource("pcm-s16") : null;
  if (sound !== null) output.addAudioTrack(sound);
  output.setMetadataTags(shape.tags ?? {});
  await output.start();
  const { decoderConfig, packets } = pictures;
  for (const [index, timeMs] of times.entries()) {
    // One group of pictures drawn once and used again keeps every stream decodable.
    const picture = packets[index % DRAWN_FRAMES];
    if (picture === undefined) throw new Error("No picture was drawn.");
    const packet = picture.clone({ timestamp: timeMs / 1000, duration: 1 / 60 });
    await video.add(packet, { decoderConfig });
  }
  if (sound !== null) await addHum(sound, Math.max(...times) / 1000);
  return finished(output);
}

/** A file with sound and no picture. */
export async function makeSoundOnly(): Promise<Uint8Array> {
  const output = new Output({
    format: new Mp4OutputFormat({ fastStart: "in-memory" }),
    target: new BufferTarget(),
  });
  const sound = new EncodedAudioPacketSource("pcm-s16");
  output.addAudioTrack(sound);
  await output.start();
  await addHum(sound, 0.5);
  return finished(output);
}

/**
 * A WebM whose packets carry VP8 frame headers and no picture data behind them: good for everything that reads the
 * container, not for playing.
 */
export async function makeWebm(frameTimesMs = evenTimesMs(30), tags: MetadataTags = {}): Promise<Uint8Array> {
  const output = new Output({ format: new WebMOutputFormat(), target: new BufferTarget() });
  const video = new EncodedVideoPacketSource("vp8");
  output.addVideoTrack(video);
  output.setMetadataTags(tags);
  await output.start();
  const decoderConfig = { codec: "vp8", codedWidth: STORED_WIDTH_PX, codedHeight: STORED_HEIGHT_PX };
  for (const [index, timeMs] of frameTimesMs.entries()) {
    const isKey = index % KEY_FRAME_EVERY === 0;
    const data = new Uint8Array(200).fill(index);
    data.set(isKey ? [0x10, 0, 0, 0x9d, 0x01, 0x2a, STORED_WIDTH_PX, 0, STORED_HEIGHT_PX, 0] : [0x11, 0, 0]);
    await video.add(new EncodedPacket(data, isKey ? "key" : "delta", timeMs / 1000, 1 / 60), {
      decoderConfig,
    });
  }
  return finished(output);
}

function formatOf(shape: ClipShape): OutputFormat {
  if (shape.container === "mkv") return new MkvOutputFormat();
  const fastStart = ({ front: "in-memory", end: false, fragments: "fragmented" } as const)[
    shape.index ?? "front"
  ];
  const options = { fastStart, metadataFormat: "mdta", minimumFragmentDuration: 0.1 } as const;
  return shape.container === "mov" ? new MovOutputFormat(options) : new Mp4OutputFormat(options);
}

const SAMPLE_RATE = 8000;

async function addHum(sound: EncodedAudioPacketSource, durationS: number): Promise<void> {
  const decoderConfig = { codec: "pcm-s16", numberOfChannels: 1, sampleRate: SAMPLE_RATE };
  for (let timeS = 0; timeS < durationS; timeS += 0.1) {
    const wave = Int16Array.from({ length: SAMPLE_RATE / 10 }, (_, index) => 8000 * Math.sin(index / 6));
    const packet = new EncodedPacket(new Uint8Array(wave.buffer), "key", timeS, 0.1);
    await sound.add(packet, { decoderConfig });
  }
}

async function finished(output: Output<OutputFormat, BufferTarget>): Promise<Uint8Array> {
  await output.finalize();
  const { buffer } = output.target;
  if (buffer === null) throw new Error("The muxer wrote nothing.");
  return new Uint8Array(buffer);
}

type EncodedPictures = { decoderConfig: VideoDecoderConfig; packets: EncodedPacket[] };
let drawnOnce: Promise<EncodedPictures> | undefined;

function encodedPictures(): Promise<EncodedPictures> {
  drawnOnce ??= drawPictures();
  return drawnOnce;
}

async function drawPictures(): Promise<EncodedPictures> {
  const input = new Input({ source: new BufferSource(await encodeDrawing()), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  const decoderConfig = await track?.getDecoderConfig();
  if (!track || !decoderConfig) throw new Error("The encoder wrote no video.");
  const packets: EncodedPacket[] = [];
  for await (const packet of new EncodedPacketSink(track).packets()) {
    const type = await track.determinePacketType(packet); // the encoder's own file marks every frame a key frame
    packets.push(packet.clone({ type: type ?? packet.type }));
  }
  input.dispose();
  return { decoderConfig, packets };
}

/** A ball crossing a field, one step a frame. */
async function encodeDrawing(): Promise<Uint8Array> {
  const encoder = await h264.createH264MP4Encoder();
  encoder.width = STORED_WIDTH_PX;
  encoder.height = STORED_HEIGHT_PX;
  encoder.frameRate = 60;
  encoder.groupOfPictures = KEY_FRAME_EVERY;
  encoder.initialize();
  const canvas = createCanvas(STORED_WIDTH_PX, STORED_HEIGHT_PX);
  const context = canvas.getContext("2d");
  for (let frame = 0; frame < DRAWN_FRAMES; frame += 1) {
    context.fillStyle = "#2f6b3a";
    context.fillRect(0, 0, STORED_WIDTH_PX, STORED_HEIGHT_PX);
    context.fillStyle = "#ffffff";
    context.fillRect(frame * 2, 28, 8, 8);
    const { data } = context.getImageData(0, 0, STORED_WIDTH_PX, STORED_HEIGHT_PX);
    encoder.addFrameRgba(new Uint8Array(data.buffer, data.byteOffset, data.byteLength));
  }
  encoder.finalize();
  const bytes = encoder.FS.readFile(encoder.outputFilename);
  encoder.delete();
  return Uint8Array.from(bytes);
}
