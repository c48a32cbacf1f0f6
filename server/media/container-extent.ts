import type { FileHandle } from "node:fs/promises";
import { open } from "node:fs/promises";

/**
 * What the outermost layer of a video file says about itself, without reading any picture.
 *
 * - `family`: `iso` for MP4 and QuickTime, `matroska` for WebM and MKV, `unknown` for anything else.
 * - `declaredBytes`: how long the file says it is; 0 where it does not say (a live WebM recording).
 * - `hasIndex`: whether the table of frames is there at all. Phones write it last, so a cut recording has none.
 */
export type ContainerExtent = {
  family: "iso" | "matroska" | "unknown";
  declaredBytes: number;
  hasIndex: boolean;
};

/** Box types an MP4 or QuickTime file can begin with (ISO/IEC 14496-12 and the QuickTime file format, from memory). */
const FIRST_BOX_TYPES = new Set(["ftyp", "moov", "mdat", "wide", "free", "skip", "pnot"]);
/** `meta` at the top is a still picture's index (HEIC, AVIF): complete, though no video. */
const INDEX_BOX_TYPES = new Set(["moov", "meta"]);
/** A three-minute clip in one-second fragments has about 400 boxes; no source, a bound against hostile files. */
const MAX_BOXES = 20_000;

const EBML_ID = 0x1a45dfa3;
const SEGMENT_ID = 0x18538067;
const NOTHING: ContainerExtent = { family: "unknown", declaredBytes: 0, hasIndex: false };

/**
 * Reads the outermost boxes of the file at `path`.
 *
 * The demuxing library reads what is there and does not say what is missing, so a file that lost its end is
 * recognised here: `declaredBytes` is then more than the file holds, or `hasIndex` is false.
 *
 * @throws the system's error when the file cannot be opened or read.
 */
export async function containerExtent(path: string): Promise<ContainerExtent> {
  const file = await open(path, "r");
  try {
    const head = await bytesAt(file, 0, 12);
    if (head.length >= 8 && FIRST_BOX_TYPES.has(head.toString("latin1", 4, 8))) return await isoExtent(file);
    if (head.length >= 5 && head.readUInt32BE(0) === EBML_ID) return await matroskaExtent(file);
    return NOTHING;
  } finally {
    await file.close();
  }
}

async function isoExtent(file: FileHandle): Promise<ContainerExtent> {
  let declaredBytes = 0;
  let hasIndex = false;
  for (let count = 0; count < MAX_BOXES; count += 1) {
    const head = await bytesAt(file, declaredBytes, 16);
    if (head.length > 0 && head.length < BOX_HEADER_BYTES) declaredBytes += BOX_HEADER_BYTES; // half a header
    const box = boxHeader(head);
    if (box === null) break;
    hasIndex ||= INDEX_BOX_TYPES.has(box.type);
    if (box.byteCount === 0) break; // "to the end of the file"
    declaredBytes += box.byteCount;
  }
  return { family: "iso", declaredBytes, hasIndex };
}

const BOX_HEADER_BYTES = 8;

/** The type and length of the box that begins with `head`, or null where no box begins. */
function boxHeader(head: Buffer): { type: string; byteCount: number } | null {
  if (head.length < BOX_HEADER_BYTES) return null;
  const type = head.toString("latin1", 4, 8);
  if (!/^[\x20-\x7e\xa9]{4}$/.test(type)) return null;
  const short = head.readUInt32BE(0);
  if (short === 0 || short >= 8) return { type, byteCount: short };
  if (short !== 1 || head.length < 16) return null;
  const long = Number(head.readBigUInt64BE(8));
  return long >= 16 ? { type, byteCount: long } : null;
}

async function matroskaExtent(file: FileHandle): Promise<ContainerExtent> {
  const header = elementSize(await bytesAt(file, 4, 8));
  if (header === null) return NOTHING;
  const segmentAt = 4 + header.width + header.value;
  const segment = await bytesAt(file, segmentAt, 12);
  if (segment.length < 5 || segment.readUInt32BE(0) !== SEGMENT_ID) return { ...NOTHING, family: "matroska" };
  const size = elementSize(segment.subarray(4));
  const declaredBytes =
    size === null || size.isUnknown ? 0 : segmentAt + SEGMENT_ID_BYTES + size.width + size.value;
  return { family: "matroska", declaredBytes, hasIndex: true };
}

const SEGMENT_ID_BYTES = 4;

/** An EBML length (RFC 8794, section 4): leading zero bits give the width; all value bits set means unknown. */
function elementSize(bytes: Buffer): { value: number; width: number; isUnknown: boolean } | null {
  const first = bytes[0];
  if (first === undefined || first === 0) return null;
  const width = Math.clz32(first) - 23;
  if (bytes.length < width) return null;
  let value = first & (0xff >> width);
  let isUnknown = value === 0xff >> width;
  for (const byte of bytes.subarray(1, width)) {
    value = value * 256 + byte;
    isUnknown &&= byte === 0xff;
  }
  return { value, width, isUnknown };
}

async function bytesAt(file: FileHandle, position: number, byteCount: number): Promise<Buffer> {
  if (!Number.isSafeInteger(position)) return Buffer.alloc(0);
  const { bytesRead, buffer } = await file.read(Buffer.alloc(byteCount), 0, byteCount, position);
  return buffer.subarray(0, bytesRead);
}
