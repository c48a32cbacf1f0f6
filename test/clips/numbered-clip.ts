import { createRequire } from "node:module";
import type * as Encoding from "h264-mp4-encoder";
import {
  BufferSource,
  BufferTarget,
  EncodedPacket,
  EncodedPacketSink,
  EncodedVideoPacketSource,
  Input,
  type MetadataTags,
  MP4,
  Mp4OutputFormat,
  Output,
  type OutputFormat,
  WebMOutputFormat,
} from "mediabunny";
import { pixelsOf, storedSize, type Turn } from "./frame-pattern";

/** The encoder is a classic module: an import by the usual route would be given no names. */
const { createH264MP4Encoder }: typeof Encoding = createRequire(import.meta.url)("h264-mp4-encoder");

/** How a numbered clip is made. */
export interface NumberedShape {
  /** The number that every frame of it carries, 0 to 31. */
  clip: number;
  /** One a stored frame, ascending; those before zero are trimmed off by an edit list. */
  timesMs: readonly number[];
  /** A key frame after so many; as many as there are frames for a single one. */
  group: number;
  turn?: Turn;
  tags?: MetadataTags;
  /** How many times larger than the usual picture. */
  scale?: number;
  /** Bytes added to every frame that a decoder skips over. */
  paddingBytes?: number;
  /** From this stored frame on the pictures are destroyed; the container still lists them. */
  damagedFrom?: number;
}

/** `count` evenly spaced times. */
export const evenTimesMs = (count: number, fps: number): number[] =>
  Array.from({ length: count }, (_, index) => (index * 1000) / fps);

/** Times of a phone that holds its rate badly: between 20 and 60 frames a second, the same on every run. */
export function unevenTimesMs(count: number): number[] {
  const at = (index: number) => index * 25 + 9 * Math.sin(index * 1.7) + 3 * Math.sin(index * 5.3);
  return Array.from({ length: count }, (_, index) => at(index));
}

/** The number the first frame that is shown carries is 0: those trimmed off before it count down from the top. */
export const frameNumbers = ({ timesMs }: Pick<NumberedShape, "timesMs">): number[] => {
  const trimmed = timesMs.filter((timeMs) => timeMs < 0).length;
  return timesMs.map((_, index) => (index < trimmed ? 2047 - index : index - trimmed));
};

/** H.264 in MP4 whose frames carry their numbers; the same shape gives the same pictures. */
export async function numberedMp4(shape: NumberedShape): Promise<Uint8Array> {
  const { timesMs, turn = 0, tags = {}, paddingBytes = 0, damagedFrom = Number.POSITIVE_INFINITY } = shape;
  const { packets, decoderConfig } = await packetsOf(await encoded(shape));
  const output = new Output({
    format: new Mp4OutputFormat({ fastStart: "in-memory", metadataFormat: "mdta" }),
    target: new BufferTarget(),
  });
  const source = new EncodedVideoPacketSource("avc");
  output.addVideoTrack(source, { rotation: turn });
  output.setMetadataTags(tags);
  await output.start();
  for (const [index, timeMs] of timesMs.entries()) {
    const packet = packets[index];
    if (packet === undefined) throw new Error("The encoder left a frame out.");
    const data = index < damagedFrom ? padded(packet.data, paddingBytes) : destroyed(packet.data);
    await source.add(timed(data, packet.type, timesMs, index, timeMs), { decoderConfig });
  }
  return finished(output);
}

/** Packets of a stream as a browser's encoder gave them. */
export interface BrowserPacket {
  type: "key" | "delta";
  data: Uint8Array;
}

/** VP9 in WebM from packets that a browser encoded. */
export async function numberedWebm(
  timesMs: readonly number[],
  codec: string,
  packets: readonly BrowserPacket[],
): Promise<Uint8Array> {
  const output = new Output({ format: new WebMOutputFormat(), target: new BufferTarget() });
  const source = new EncodedVideoPacketSource("vp9");
  output.addVideoTrack(source);
  await output.start();
  const { widthPx, heightPx } = storedSize(0);
  const decoderConfig = { codec, codedWidth: widthPx, codedHeight: heightPx };
  for (const [index, { type, data }] of packets.entries()) {
    await source.add(timed(data, type, timesMs, index, timesMs[index] ?? 0), { decoderConfig });
  }
  return finished(output);
}

function timed(
  data: Uint8Array,
  type: "key" | "delta",
  timesMs: readonly number[],
  index: number,
  timeMs: number,
): EncodedPacket {
  const before = timesMs[index - 1] ?? timeMs - (timesMs[1] ?? 33);
  const durationMs = (timesMs[index + 1] ?? timeMs + (timeMs - before)) - timeMs;
  return new EncodedPacket(data, type, timeMs / 1000, durationMs / 1000);
}

async function encoded(shape: NumberedShape): Promise<Uint8Array> {
  const { clip, group, turn = 0, scale = 1 } = shape;
  const { widthPx, heightPx } = storedSize(turn, scale);
  const encoder = await createH264MP4Encoder();
  encoder.width = widthPx;
  encoder.height = heightPx;
  encoder.frameRate = 60;
  encoder.groupOfPictures = group;
  encoder.quantizationParameter = 20;
  encoder.speed = 0;
  encoder.initialize();
  for (const frame of frameNumbers(shape)) encoder.addFrameRgba(pixelsOf({ clip, frame }, turn, scale));
  encoder.finalize();
  const bytes = Uint8Array.from(encoder.FS.readFile(encoder.outputFilename));
  encoder.FS.unlink(encoder.outputFilename);
  encoder.delete();
  return bytes;
}

async function packetsOf(file: Uint8Array) {
  const input = new Input({ source: new BufferSource(file), formats: [MP4] });
  const track = await input.getPrimaryVideoTrack();
  const decoderConfig = await track?.getDecoderConfig();
  if (!track || !decoderConfig) throw new Error("The encoder wrote no video.");
  const packets: EncodedPacket[] = [];
  for await (const packet of new EncodedPacketSink(track).packets()) {
    /* The encoder's own file marks every frame a key frame. */
    packets.push(packet.clone({ type: (await track.determinePacketType(packet)) ?? packet.type }));
  }
  input.dispose();
  return { packets, decoderConfig };
}

const LENGTH_BYTES = 4;
const FILLER = 0x0c;

/** A frame's data with a filler unit (ISO/IEC 14496-10, 7.3.2.7) behind it: real bytes that show nothing. */
function padded(data: Uint8Array, paddingBytes: number): Uint8Array {
  if (paddingBytes === 0) return data;
  const whole = new Uint8Array(data.byteLength + LENGTH_BYTES + paddingBytes).fill(0xff, data.byteLength);
  whole.set(data);
  new DataView(whole.buffer).setUint32(data.byteLength, paddingBytes);
  whole[data.byteLength + LENGTH_BYTES] = FILLER;
  whole[whole.byteLength - 1] = 0x80;
  return whole;
}

/** The data of a frame with all but its length and kind overwritten. */
function destroyed(data: Uint8Array): Uint8Array {
  return Uint8Array.from(data).fill(0xa5, LENGTH_BYTES + 1);
}

async function finished(output: Output<OutputFormat, BufferTarget>): Promise<Uint8Array> {
  await output.finalize();
  const { buffer } = output.target;
  if (buffer === null) throw new Error("The muxer wrote nothing.");
  return new Uint8Array(buffer);
}
