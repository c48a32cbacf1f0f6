import type { Input, InputVideoTrack, VideoSample, VideoSampleSink } from "mediabunny";
import { frameAt, seekTargetMs } from "../frame-table";
import type { FrameSource, HeldFrame } from "./frame-window";
import type { PictureSize } from "./picture-place";
import { type FrameRun, mostFrames } from "./window-plan";

/** Two tables of one file agree within what containers round a time to. */
const AGREEING_MS = 1;

/** What is kept of a file that was read, beside its pictures; common practice, no source. */
const MOST_FILE_BYTES = 16_000_000;

/** A line that fails is tried again so often, so many seconds later; meanwhile the film is sought. */
const RETRIES = 3;
const RETRY_S = 1;

/** Bytes a pixel takes as a decoder gives it, and as a bitmap. */
const DECODED_BYTES_PER_PX = 1.5;
const BITMAP_BYTES_PER_PX = 4;

/** A film whose times in the file are not those of its table. */
class TablesDisagree extends Error {}

/** The film to decode. */
export interface FilmToDecode {
  address: string;
  frameTimesMs: readonly number[];
  size: PictureSize;
}

/**
 * Opens a film for decoding, reading only the parts of its file that are needed.
 * @returns null where this browser cannot decode it; errors of the line and of the file are thrown
 */
export async function openFrames(film: FilmToDecode): Promise<FrameSource | null> {
  if (!("VideoDecoder" in globalThis)) return null;
  const { ALL_FORMATS, Input, UrlSource, VideoSampleSink } = await import("mediabunny");
  const source = new UrlSource(film.address, {
    maxCacheSize: MOST_FILE_BYTES,
    getRetryDelay: (attempts) => (attempts < RETRIES ? RETRY_S : null),
  });
  const input = new Input({ formats: ALL_FORMATS, source });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (!track || !(await track.canDecode())) return disposed(input);
    const isOwnMemory = await decodesInSoftware(track);
    const sink = new VideoSampleSink(track, isOwnMemory ? { hardwareAcceleration: "prefer-software" } : {});
    return framesOf(film, input, sink, isOwnMemory);
  } catch (error) {
    input.dispose();
    throw error;
  }
}

function disposed(input: Input): null {
  input.dispose();
  return null;
}

/**
 * A decoder in hardware has few pictures and stands still while they are all held; one in software makes as many as are
 * wanted.
 */
async function decodesInSoftware(track: InputVideoTrack): Promise<boolean> {
  const config = await track.getDecoderConfig();
  if (!config) return false;
  const answer = await VideoDecoder.isConfigSupported({ ...config, hardwareAcceleration: "prefer-software" });
  return answer.supported === true;
}

function framesOf(
  { frameTimesMs, size }: FilmToDecode,
  input: Input,
  sink: VideoSampleSink,
  isOwnMemory: boolean,
): FrameSource {
  const { deviceMemory } = navigator as Navigator & { deviceMemory?: number };
  const middleOf = (frame: number) => seekTargetMs(frameTimesMs, frame, 0.5, Number.NaN) / 1000;
  return {
    most: mostFrames(size, isOwnMemory ? DECODED_BYTES_PER_PX : BITMAP_BYTES_PER_PX, deviceMemory),
    async *decode({ from, to }: FrameRun) {
      for await (const sample of sink.samples(middleOf(from), middleOf(to - 1))) {
        yield held(sample, frameOf(frameTimesMs, sample), size, isOwnMemory);
      }
    },
    close: () => input.dispose(),
  };
}

/** The frame that a picture is, by its own time looked up in the table. */
function frameOf(frameTimesMs: readonly number[], sample: VideoSample): number {
  const timeMs = sample.timestamp * 1000;
  const frame = frameAt(frameTimesMs, timeMs);
  if (Math.abs((frameTimesMs[frame] ?? Number.NaN) - timeMs) <= AGREEING_MS) return frame;
  sample.close();
  throw new TablesDisagree();
}

function held(sample: VideoSample, frame: number, size: PictureSize, isOwnMemory: boolean): HeldFrame {
  const { widthPx, heightPx } = size;
  if (isOwnMemory) {
    return {
      frame,
      paint: (context) => sample.draw(context, 0, 0, widthPx, heightPx),
      close: () => sample.close(),
    };
  }
  const bitmap = copied(sample, size);
  return { frame, paint: (context) => context.drawImage(bitmap, 0, 0), close: () => bitmap.close() };
}

function copied(sample: VideoSample, { widthPx, heightPx }: PictureSize): ImageBitmap {
  try {
    const canvas = new OffscreenCanvas(widthPx, heightPx);
    const context = canvas.getContext("2d", { alpha: false });
    if (!context) throw new Error("This browser gives no canvas.");
    sample.draw(context, 0, 0, widthPx, heightPx);
    return canvas.transferToImageBitmap();
  } finally {
    sample.close();
  }
}
