import type { FileHandle } from "node:fs/promises";
import type { ByteRange } from "./byte-range";

const CHUNK_BYTES = 256 * 1024;

/**
 * The bytes of `range` as a stream that reads only when the receiver asks, and closes `file` when it has sent them,
 * when the receiver cancels, when `signal` aborts, or when reading fails.
 *
 * A dropped connection may abort without cancelling, or cancel without aborting; both are heard, so that no
 * descriptor stays open. A file that turns out shorter than its range fails the stream rather than ending it early.
 */
export function fileStream(
  file: FileHandle,
  range: ByteRange,
  signal: AbortSignal,
): ReadableStream<Uint8Array> {
  let position = range.first;
  let isClosed = false;
  const close = async () => {
    if (isClosed) return;
    isClosed = true;
    signal.removeEventListener("abort", close);
    await file.close();
  };
  signal.addEventListener("abort", close, { once: true });
  if (signal.aborted) void close();

  return new ReadableStream<Uint8Array>(
    {
      async pull(controller) {
        if (isClosed) return controller.error(new Error("The receiver is gone."));
        const chunk = await readChunk(file, position, range.last).catch(async (error: unknown) => {
          await close();
          throw error;
        });
        if (isClosed) return controller.error(new Error("The receiver is gone."));
        position += chunk.byteLength;
        controller.enqueue(chunk);
        if (position > range.last) {
          await close();
          controller.close();
        }
      },
      cancel: close,
    },
    { highWaterMark: 0 },
  );
}

async function readChunk(file: FileHandle, position: number, last: number): Promise<Uint8Array> {
  const length = Math.min(CHUNK_BYTES, last - position + 1);
  const { bytesRead, buffer } = await file.read(Buffer.allocUnsafeSlow(length), 0, length, position);
  if (bytesRead === 0) throw new Error("The file is shorter than was said.");
  return buffer.subarray(0, bytesRead);
}
