import { createRequire } from "node:module";
import type * as Encoding from "h264-mp4-encoder";
import { BufferSource, BufferTarget, Conversion, Input, MP4, Mp4OutputFormat, Output } from "mediabunny";
import { undatedMovie } from "@/server/media/undated-movie";

/** The encoder is a classic module: an import by the usual route would be given no names. */
const { createH264MP4Encoder }: typeof Encoding = createRequire(import.meta.url)("h264-mp4-encoder");

/** Pixels of the frame with this number, four bytes each, top row first. */
export type FramePixels = (frame: number) => Uint8ClampedArray | Uint8Array;

export type EncodedSize = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fps: number;
  readonly frameCount: number;
  /** A key frame after so many; left out, every quarter of a second or so. */
  readonly group?: number;
};

/** Key frames this close let a player step through quickly and exactly. */
const GROUP = 15;

/** Frames as an H.264 MP4 whose index stands first. The same frames give the same bytes. */
export async function encodeClip(size: EncodedSize, pixelsOf: FramePixels): Promise<Uint8Array> {
  return indexedFirst(await encodedFrames(size, pixelsOf));
}

async function encodedFrames(size: EncodedSize, pixelsOf: FramePixels): Promise<Uint8Array> {
  const encoder = await createH264MP4Encoder();
  encoder.width = size.widthPx;
  encoder.height = size.heightPx;
  encoder.frameRate = size.fps;
  encoder.groupOfPictures = size.group ?? GROUP;
  encoder.quantizationParameter = 24;
  encoder.speed = 5;
  encoder.initialize();
  for (let frame = 0; frame < size.frameCount; frame++) encoder.addFrameRgba(pixelsOf(frame));
  encoder.finalize();
  const bytes = encoder.FS.readFile(encoder.outputFilename);
  encoder.FS.unlink(encoder.outputFilename);
  encoder.delete();
  return bytes;
}

/** The encoder's own file seeks wrongly in browsers: its packets are copied, untouched, into a sound one. */
async function indexedFirst(file: Uint8Array): Promise<Uint8Array> {
  const input = new Input({ source: new BufferSource(file), formats: [MP4] });
  const target = new BufferTarget();
  const output = new Output({ format: new Mp4OutputFormat({ fastStart: "in-memory" }), target });
  const conversion = await Conversion.init({ input, output });
  await conversion.execute();
  if (target.buffer === null) throw new Error("the clip could not be put together");
  const bytes = new Uint8Array(target.buffer);
  undatedMovie(bytes);
  return bytes;
}
