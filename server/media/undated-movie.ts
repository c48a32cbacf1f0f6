const PARENT_BOXES = new Set(["moov", "trak", "mdia"]);
const DATED_BOXES = new Set(["mvhd", "tkhd", "mdhd"]);

/**
 * Clears the creation and modification times in the bytes of an MP4 `moov` box, in place
 * (`mvhd`, `tkhd`, `mdhd`: ISO/IEC 14496-12, sections 8.2.2, 8.3.2 and 8.4.2).
 *
 * The muxer stamps the hour of copying, which for a clip sent from the field is the hour of practice. With the
 * stamps gone, two copies of one clip are equal byte for byte.
 */
export function undatedMovie(bytes: Uint8Array): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 0;
  while (at + 12 <= bytes.byteLength) {
    const byteCount = view.getUint32(at);
    if (byteCount < 8 || at + byteCount > bytes.byteLength) return;
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (PARENT_BOXES.has(type)) undatedMovie(bytes.subarray(at + 8, at + byteCount));
    if (DATED_BOXES.has(type)) {
      const isLong = view.getUint8(at + 8) === 1; // version 1 keeps 64-bit times
      bytes.fill(0, at + 12, at + 12 + (isLong ? 16 : 8));
    }
    at += byteCount;
  }
}
