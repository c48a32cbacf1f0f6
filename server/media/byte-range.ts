/** A stretch of a file, first and last byte both included, as HTTP counts them. */
export type ByteRange = { first: number; last: number };

/**
 * Reads a `Range` header against a file of `byteCount` bytes (RFC 9110, section 14).
 *
 * - `whole`: send everything: no header, another unit, several ranges or a malformed one (a server may ignore these).
 * - `unsatisfiable`: well formed, but no byte of it exists.
 *
 * @example byteRange("bytes=2-", 10) // { first: 2, last: 9 }
 * @example byteRange("bytes=-3", 10) // { first: 7, last: 9 }
 */
export function byteRange(header: string | null, byteCount: number): ByteRange | "whole" | "unsatisfiable" {
  const match = /^bytes=\s*(\d*)-(\d*)\s*$/i.exec(header ?? "");
  const [, from = "", to = ""] = match ?? [];
  if (from === "" && to === "") return "whole";
  if (from === "") return suffix(Number(to), byteCount);
  const first = Number(from);
  const last = to === "" ? byteCount - 1 : Math.min(Number(to), byteCount - 1);
  if (to !== "" && Number(to) < first) return "whole";
  return first < byteCount ? { first, last } : "unsatisfiable";
}

function suffix(length: number, byteCount: number): ByteRange | "unsatisfiable" {
  if (length === 0 || byteCount === 0) return "unsatisfiable";
  return { first: Math.max(0, byteCount - length), last: byteCount - 1 };
}
