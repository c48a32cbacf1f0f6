import { createCanvas, loadImage } from "@napi-rs/canvas";
import { describe, expect, test } from "vitest";
import { acceptPoster, MAX_POSTER_BYTES } from "@/server/media/poster";

const picture = drawJpeg(320, 180);

/** A JPEG with extra segments right behind its start. */
const withSegments = (...segments: Buffer[]): Buffer =>
  Buffer.concat([picture.subarray(0, 2), ...segments, picture.subarray(2)]);

function segment(marker: number, content: string): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([head, Buffer.from(content, "latin1")]);
}

describe("a still picture that may be kept", () => {
  test("tells its size and is a picture still", async () => {
    const outcome = acceptPoster(picture);
    expect(outcome).toMatchObject({ problem: null, widthPx: 320, heightPx: 180 });
    if (outcome.problem !== null) return;
    const shown = await loadImage(Buffer.from(outcome.bytes));
    expect([shown.width, shown.height]).toEqual([320, 180]);
    expect(pixels(shown)).toEqual(pixels(await loadImage(picture)));
  });

  test("loses every application and comment segment and whatever is hidden behind its end", () => {
    const marked = Buffer.concat([
      withSegments(
        segment(0xe1, "Exif\0\0 GPS 47.3769 N"),
        segment(0xe2, "Marked colour profile"),
        segment(0xef, "Marked application"),
        segment(0xfe, "Marked comment"),
      ),
      Buffer.from("Marked tail"),
    ]);
    const outcome = acceptPoster(marked);
    if (outcome.problem !== null) throw new Error(outcome.problem);
    const kept = Buffer.from(outcome.bytes);
    for (const mark of ["GPS", "Marked", "Exif", "JFIF"]) expect(kept.includes(mark), mark).toBe(false);
    expect(acceptPoster(kept)).toEqual(outcome);
    expect(acceptPoster(picture)).toEqual(outcome);
  });

  test("may have fill bytes before a marker", () => {
    expect(acceptPoster(withSegments(Buffer.from([0xff, 0xff])))).toMatchObject({
      problem: null,
      widthPx: 320,
    });
  });

  test("may be exactly as large as the limit and not a byte more", () => {
    const filler = "x".repeat(60_000);
    const padding = MAX_POSTER_BYTES - picture.byteLength;
    const segments = Array.from({ length: Math.floor(padding / 60_004) }, () => segment(0xfe, filler));
    const rest = padding - segments.length * 60_004;
    const full = withSegments(...segments, segment(0xfe, "x".repeat(rest - 4)));
    expect(full.byteLength).toBe(MAX_POSTER_BYTES);
    expect(acceptPoster(full)).toMatchObject({ problem: null });
    expect(acceptPoster(Buffer.concat([full, Buffer.alloc(1)]))).toEqual({ problem: "too_large" });
  });
});

describe("a still picture that is refused", () => {
  test.each([
    ["nothing", Buffer.alloc(0), "not_jpeg"],
    ["a PNG", createCanvas(4, 4).toBuffer("image/png"), "not_jpeg"],
    ["text", Buffer.from("<svg onload=alert(1)>"), "not_jpeg"],
    ["a start and then text", Buffer.from([0xff, 0xd8, 0x3c, 0x68, 0x74, 0x6d, 0x6c]), "not_jpeg"],
    ["a start and an end with nothing between", Buffer.from([0xff, 0xd8, 0xff, 0xd9]), "not_jpeg"],
    ["more than 4096 pixels wide", drawJpeg(4098, 2), "too_large"],
  ] as const)("is %s", (_, bytes, problem) => {
    expect(acceptPoster(bytes)).toEqual({ problem });
  });

  test("is one that ends early, wherever it ends", () => {
    for (let length = 2; length < picture.byteLength; length += 7) {
      expect(acceptPoster(picture.subarray(0, length)), `after ${length} bytes`).toEqual({
        problem: "cut_off",
      });
    }
  });

  test("is one whose header says it has no width", () => {
    const flat = Buffer.from(picture);
    const frame = flat.findIndex(
      (byte, at) => byte === 0xff && (flat[at + 1] === 0xc0 || flat[at + 1] === 0xc2),
    );
    flat.writeUInt16BE(0, frame + 7);
    expect(acceptPoster(flat)).toEqual({ problem: "not_jpeg" });
  });
});

function drawJpeg(widthPx: number, heightPx: number): Buffer {
  const canvas = createCanvas(widthPx, heightPx);
  const context = canvas.getContext("2d");
  context.fillStyle = "#2f6b3a";
  context.fillRect(0, 0, widthPx, heightPx);
  context.fillStyle = "#ffffff";
  context.fillRect(widthPx / 3, 0, widthPx / 3, heightPx / 2);
  return canvas.toBuffer("image/jpeg", 80);
}

function pixels(image: Awaited<ReturnType<typeof loadImage>>): Uint8ClampedArray {
  const context = createCanvas(image.width, image.height).getContext("2d");
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, image.width, image.height).data;
}
