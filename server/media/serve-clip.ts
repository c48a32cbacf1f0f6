import { open } from "node:fs/promises";
import { type ByteRange, byteRange } from "./byte-range";
import { fileStream } from "./file-stream";

/** A stored file as it is to be sent. */
export type ServedFile = {
  path: string;
  contentType: string;
  /** Without quotes; must change whenever the bytes do. */
  etag: string;
  /** The file's true length. */
  byteCount: number;
};

/**
 * Nothing of a clip stays in a shared cache, is taken for a page, or is drawn into another site's page; a file that
 * slipped through as a page could run nothing.
 */
const GUARDED_HEADERS = {
  "Cache-Control": "private, no-store",
  "X-Content-Type-Options": "nosniff",
  "Content-Security-Policy": "sandbox; default-src 'none'",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Content-Disposition": "inline",
  "Accept-Ranges": "bytes",
};

/**
 * Answers a GET or HEAD for a stored file whose asker has already been allowed to see it: the whole of it (200), the
 * one range asked for (206), or that there is no such range (416). `If-Range` with another validator gives the whole
 * file. A file that is gone answers 404. Other methods answer 405.
 */
export async function serveFile(request: Request, file: ServedFile): Promise<Response> {
  if (request.method !== "GET" && request.method !== "HEAD") {
    return new Response(null, { status: 405, headers: { ...GUARDED_HEADERS, Allow: "GET, HEAD" } });
  }
  const range = request.method === "GET" ? rangeAsked(request, file) : "whole";
  if (range === "unsatisfiable") {
    const headers = { ...GUARDED_HEADERS, "Content-Range": `bytes */${file.byteCount}` };
    return new Response(null, { status: 416, headers });
  }
  const sent = range === "whole" ? { first: 0, last: file.byteCount - 1 } : range;
  const headers = new Headers({
    ...GUARDED_HEADERS,
    "Content-Type": file.contentType,
    "Content-Length": String(sent.last - sent.first + 1),
    ETag: `"${file.etag}"`,
  });
  if (range !== "whole") headers.set("Content-Range", `bytes ${sent.first}-${sent.last}/${file.byteCount}`);
  return respond(request, file, sent, { status: range === "whole" ? 200 : 206, headers });
}

function rangeAsked(request: Request, file: ServedFile): ByteRange | "whole" | "unsatisfiable" {
  const validator = request.headers.get("if-range");
  if (validator !== null && validator !== `"${file.etag}"`) return "whole";
  return byteRange(request.headers.get("range"), file.byteCount);
}

async function respond(
  request: Request,
  file: ServedFile,
  sent: ByteRange,
  answer: { status: number; headers: Headers },
): Promise<Response> {
  const handle = await open(/* turbopackIgnore: true */ file.path, "r").catch((error: unknown) => {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  });
  if (handle === null) return new Response(null, { status: 404, headers: GUARDED_HEADERS });
  if (request.method === "HEAD" || file.byteCount === 0) {
    await handle.close();
    return new Response(null, answer);
  }
  return new Response(fileStream(handle, sent, request.signal), answer);
}
