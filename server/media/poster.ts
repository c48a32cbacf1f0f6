/** The largest still picture kept, in bytes; common practice, no source: 1280 by 720 at good quality is about 150 kB. */
export const MAX_POSTER_BYTES = 300_000;
/** The longest side, in pixels: as long as the widest phone video, 4K; no source. */
export const MAX_POSTER_SIDE_PX = 4096;

/**
 * A still picture that may be kept, or why it may not: `too_large` in bytes or pixels, `not_jpeg` by its content, or
 * `cut_off` before its end.
 */
export type PosterOutcome =
  | { problem: null; bytes: Uint8Array; widthPx: number; heightPx: number }
  | { problem: "too_large" | "not_jpeg" | "cut_off" };

const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;
const COMMENT = 0xfe;
/** May stand before any marker and means nothing. */
const FILL = 0xff;

/**
 * Takes a JPEG (ISO/IEC 10918-1, annex B) and returns it without application and comment segments, where cameras put
 * place, device and day, and without anything behind its end. What is kept is the picture alone.
 *
 * The browser draws the poster, but what arrives may be anything: it is judged by its content, never by its name.
 */
export function acceptPoster(bytes: Uint8Array): PosterOutcome {
  if (bytes.byteLength > MAX_POSTER_BYTES) return { problem: "too_large" };
  if (bytes[0] !== 0xff || bytes[1] !== START) return { problem: "not_jpeg" };
  const segments = readSegments(bytes);
  if (typeof segments === "string") return { problem: segments };
  const size = pictureSize(segments);
  if (size === null) return { problem: "not_jpeg" };
  if (Math.max(size.widthPx, size.heightPx) > MAX_POSTER_SIDE_PX) return { problem: "too_large" };
  const kept = segments.filter(({ marker }) => !isApplication(marker) && marker !== COMMENT);
  return { problem: null, bytes: Buffer.concat(kept.map((segment) => segment.bytes)), ...size };
}

/** One marker with what belongs to it; a scan's picture data belongs to the scan. */
type Segment = { marker: number; bytes: Uint8Array };

/** The segments from the start to the end of the picture, both included. */
function readSegments(bytes: Uint8Array): Segment[] | "not_jpeg" | "cut_off" {
  const segments: Segment[] = [];
  let at = 0;
  while (at + 1 < bytes.byteLength) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff || marker === 0) return "not_jpeg";
    const end = segmentEnd(bytes, at, marker);
    if (end > bytes.byteLength) return "cut_off";
    if (marker !== FILL) segments.push({ marker, bytes: bytes.subarray(at, end) });
    if (marker === END) return segments;
    at = end;
  }
  return "cut_off";
}

/** Where the segment at `at` ends; beyond the last byte where it is not all there. */
function segmentEnd(bytes: Uint8Array, at: number, marker: number): number {
  if (marker === FILL) return at + 1;
  if (marker === START || marker === END) return at + 2;
  if (at + 4 > bytes.byteLength) return at + 4;
  const end = at + 2 + Math.max(2, sixteenBits(bytes, at + 2));
  return marker === SCAN ? scanEnd(bytes, end) : end;
}

/** Picture data runs until a marker that is neither a stuffed zero nor a restart. */
function scanEnd(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.byteLength; at += 1) {
    const next = bytes[at + 1] ?? 0;
    const isRestart = next >= 0xd0 && next <= 0xd7;
    if (bytes[at] === 0xff && next !== 0 && !isRestart) return at;
  }
  return bytes.byteLength + 1;
}

function pictureSize(segments: Segment[]): { widthPx: number; heightPx: number } | null {
  const frames = segments.filter(({ marker }) => isFrame(marker));
  const frame = frames[0];
  const hasScan = segments.some(({ marker }) => marker === SCAN);
  if (frame === undefined || frames.length > 1 || !hasScan || frame.bytes.byteLength < 9) return null;
  const size = { widthPx: sixteenBits(frame.bytes, 7), heightPx: sixteenBits(frame.bytes, 5) };
  return size.widthPx > 0 && size.heightPx > 0 ? size : null;
}

const isApplication = (marker: number): boolean => marker >= 0xe0 && marker <= 0xef;

/** Start of frame: C0 to CF but for the tables among them (C4, C8, CC). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

const sixteenBits = (bytes: Uint8Array, at: number): number => (bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0);
