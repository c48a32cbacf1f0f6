import { createHash } from "node:crypto";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, vi } from "vitest";
import { keepClipPart, newClipName, sha256OfFile } from "@/server/media/clip-store";
import { UploadServer } from "@/server/media/upload-server";
import type { FinishedUpload, UploadSettings } from "@/server/media/upload-settings";

export type Sending = {
  method: string;
  path?: string;
  person?: string | null;
  headers?: Record<string, string>;
  body?: Uint8Array;
};

/** A request as a tus client makes it; `person` stands for whoever is signed in. */
export function requestFor({ method, path, person = "guardian-1", headers = {}, body }: Sending): Request {
  const all = new Headers({ "tus-resumable": "1.0.0", ...headers });
  if (person !== null) all.set("x-person", person);
  if (body !== undefined) all.set("content-type", "application/offset+octet-stream");
  return new Request(`http://academy.test${path ?? "/api/uploads"}`, {
    method,
    headers: all,
    body: body && Buffer.from(body),
  });
}

export const metadataHeader = (values: Record<string, string>): string =>
  Object.entries(values)
    .map(([name, value]) => `${name} ${Buffer.from(value).toString("base64")}`)
    .join(",");

/** Begins an upload and returns its address. */
export async function begin(
  server: UploadServer,
  byteCount: number,
  headers: Record<string, string> = {},
): Promise<string> {
  const request = requestFor({ method: "POST", headers: { "upload-length": String(byteCount), ...headers } });
  const response = await server.handle(request);
  expect(response.status).toBe(201);
  return response.headers.get("location") ?? "";
}

export const sendPiece = (
  server: UploadServer,
  path: string,
  offset: number,
  body: Uint8Array,
  person = "guardian-1",
): Promise<Response> =>
  server.handle(
    requestFor({ method: "PATCH", path, body, person, headers: { "upload-offset": String(offset) } }),
  );

/** How far an upload has come, as its sender hears it. */
export async function offsetOf(server: UploadServer, path: string): Promise<number> {
  const response = await server.handle(requestFor({ method: "HEAD", path }));
  expect(response.status).toBe(200);
  return Number(response.headers.get("upload-offset"));
}

export const sha256Of = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/**
 * A receiving desk with a fresh folder for every test. Its servers know people by a header, refuse round-2 to
 * everybody, and keep whatever arrives, noted in `taken`.
 */
export class UploadDesk {
  baseDir = "";
  taken: (FinishedUpload & { sha256: string })[] = [];
  private isOpen = false;

  constructor(folder: string) {
    let folders = 0;
    beforeEach(() => {
      folders += 1;
      this.baseDir = join(folder, `uploads-${folders}`);
      this.taken = [];
      this.isOpen = false;
    });
    /* A server makes its folder without being waited for: it must not do so while all of them are taken away. */
    afterEach(() => vi.waitUntil(() => !this.isOpen || existsSync(this.baseDir)));
  }

  /** The files that lie in the folder now. */
  names(): string[] {
    return readdirSync(this.baseDir).sort();
  }

  server(changes: Partial<UploadSettings> = {}): UploadServer {
    this.isOpen = true;
    return new UploadServer({
      publicPath: "/api/uploads",
      baseDir: this.baseDir,
      maxBytes: 5_000_000,
      reserve: { fraction: 0, atMostBytes: 0 },
      authorise: async (request, _uploadId, metadata) => {
        const personId = request.headers.get("x-person");
        if (personId === null) return { ok: false, status: 401 };
        return metadata?.roundId === "round-2" ? { ok: false, status: 403 } : { ok: true, personId };
      },
      onFinished: async (upload) => {
        this.taken.push({ ...upload, sha256: await sha256OfFile(upload.path) });
        await keepClipPart(join(this.baseDir, "..", "clips"), newClipName(), "copy", upload.path);
        return { status: 201, body: { clipId: `clip-${this.taken.length}` } };
      },
      ...changes,
    });
  }
}
