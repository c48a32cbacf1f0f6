import type { Page } from "@playwright/test";
import { pixelsOf, storedSize } from "./frame-pattern";
import { type BrowserPacket, numberedWebm } from "./numbered-clip";

const CODEC = "vp09.00.10.08";

/**
 * VP9 in WebM whose frames carry their numbers, encoded by the browser itself, since nothing else here can. WebM keeps
 * whole milliseconds, so its times are rounded as a phone's would be.
 */
export async function numberedVp9(page: Page, clip: number, timesMs: readonly number[]): Promise<Uint8Array> {
  const { widthPx, heightPx } = storedSize(0);
  const pictures = timesMs.map((_, frame) => Buffer.from(pixelsOf({ clip, frame })).toString("base64"));
  const packets = await page.evaluate(encode, { codec: CODEC, widthPx, heightPx, pictures });
  const decoded = packets.map(
    ({ type, data }): BrowserPacket => ({ type, data: Buffer.from(data, "base64") }),
  );
  return numberedWebm(timesMs, CODEC, decoded);
}

interface ToEncode {
  codec: string;
  widthPx: number;
  heightPx: number;
  pictures: string[];
}

/** Runs in the page. */
async function encode({ codec, widthPx, heightPx, pictures }: ToEncode) {
  const packets: { type: "key" | "delta"; data: string }[] = [];
  let fault: Error | null = null;
  const encoder = new VideoEncoder({
    output: (chunk) => {
      const bytes = new Uint8Array(chunk.byteLength);
      chunk.copyTo(bytes);
      packets.push({ type: chunk.type, data: btoa(String.fromCharCode(...bytes)) });
    },
    error: (error) => {
      fault = error;
    },
  });
  encoder.configure({ codec, width: widthPx, height: heightPx, bitrate: 2_000_000, latencyMode: "realtime" });
  for (const [index, picture] of pictures.entries()) {
    const pixels = Uint8Array.from(atob(picture), (each) => each.charCodeAt(0));
    const frame = new VideoFrame(pixels, {
      ...{ format: "RGBA" as const, codedWidth: widthPx, codedHeight: heightPx, timestamp: index * 20_000 },
    });
    encoder.encode(frame, { keyFrame: index % 30 === 0 });
    frame.close();
  }
  await encoder.flush();
  encoder.close();
  if (fault) throw fault;
  return packets;
}
