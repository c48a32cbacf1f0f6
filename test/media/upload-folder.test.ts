import { randomBytes } from "node:crypto";
import { utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { outstandingBytes, removeStaleUploads } from "@/server/media/upload-folder";
import type { UploadServer } from "@/server/media/upload-server";
import { scratchFolder } from "../helpers/scratch-folder";
import { begin, offsetOf, requestFor, sendPiece, sha256Of, UploadDesk } from "../helpers/upload-desk";
import { startWebServer } from "../helpers/web-server";

const folder = scratchFolder();
const desk = new UploadDesk(folder);

describe("uploads that were given up", () => {
  const hourMs = 3_600_000;

  test("are removed when nothing came for long enough, and not a moment before", async () => {
    const server = desk.server();
    const [old, fresh, done] = [await begin(server, 100), await begin(server, 100), await begin(server, 10)];
    await sendPiece(server, old, 0, Buffer.alloc(40));
    await sendPiece(server, done, 0, Buffer.alloc(10));
    writeFileSync(join(desk.baseDir, "readme"), "no upload");
    const nowMs = Date.now() + 24 * hourMs;
    for (const name of desk.names()) {
      const isFresh = name.startsWith(fresh.split("/").at(-1) ?? "");
      // A file system keeps times less finely than they are asked for: a millisecond either side is near enough.
      const atMs = nowMs - 24 * hourMs + (isFresh ? 1 : -1);
      utimesSync(join(desk.baseDir, name), atMs / 1000, atMs / 1000);
    }
    expect(await removeStaleUploads(desk.baseDir, 24 * hourMs, nowMs)).toBe(2);
    expect(desk.names()).toEqual(
      [fresh.split("/").at(-1), `${fresh.split("/").at(-1)}.json`, "readme"].sort(),
    );
    expect((await server.handle(requestFor({ method: "HEAD", path: old }))).status).toBe(404);
    expect(await offsetOf(server, fresh)).toBe(0);
  });

  test("are kept while pieces still come, however long ago they began", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    const id = path.split("/").at(-1) ?? "";
    utimesSync(join(desk.baseDir, `${id}.json`), 1, 1);
    expect(await removeStaleUploads(desk.baseDir, hourMs, Date.now())).toBe(0);
    expect(await removeStaleUploads(join(folder, "no-such-folder"), hourMs, Date.now())).toBe(0);
  });
});

test("bytes announced and not yet sent are spoken for on the disk", async () => {
  const server = desk.server();
  const [half, none, done] = [await begin(server, 100), await begin(server, 1000), await begin(server, 10)];
  await sendPiece(server, half, 0, Buffer.alloc(40));
  await sendPiece(server, done, 0, Buffer.alloc(10));
  expect(await outstandingBytes(desk.baseDir)).toBe(60 + 1000);
  await server.handle(requestFor({ method: "DELETE", path: none }));
  expect(await outstandingBytes(desk.baseDir)).toBe(60);
});

describe("a connection that drops", () => {
  let server: UploadServer;
  let web: Awaited<ReturnType<typeof startWebServer>>;
  beforeEach(async () => {
    web = await startWebServer((request) => server.handle(request));
  });
  afterEach(() => web.stop());

  test("anywhere, over HTTP, with servers made anew in between, ends in the same bytes", async () => {
    const sizes = fc.sample(fc.integer({ min: 1, max: 900_000 }), { numRuns: 12, seed: 5 });
    let timesPartWayThrough = 0;
    for (const [index, byteCount] of sizes.entries()) {
      const cuts = fc.sample(fc.integer({ min: 0, max: byteCount }), { numRuns: 4, seed: index });
      const bytes = randomBytes(byteCount);
      const offsets = await sendWithCuts(bytes, cuts);
      timesPartWayThrough += offsets.filter((offset) => offset > 0 && offset < byteCount).length;
      expect(desk.taken.at(-1)?.sha256).toBe(sha256Of(bytes));
    }
    expect(desk.taken).toHaveLength(sizes.length);
    expect(timesPartWayThrough).toBeGreaterThan(12);
    expect(desk.names().filter((name) => !name.endsWith(".taken"))).toEqual([]);
  }, 60_000);

  /** Sends `bytes`, dropping the connection at each of `cuts`; returns how far it had come each time. */
  async function sendWithCuts(bytes: Buffer, cuts: number[]): Promise<number[]> {
    server = desk.server();
    const path = await begin(server, bytes.byteLength);
    const offsets: number[] = [];
    for (const cut of cuts) {
      const offset = await offsetOf(server, path);
      await sendAndDrop(`${web.url}${path}`, offset, bytes.subarray(offset, offset + cut));
      server = desk.server();
      offsets.push(await offsetOf(server, path));
    }
    const offset = offsets.at(-1) ?? 0;
    if (offset < bytes.byteLength) await sendPiece(server, path, offset, bytes.subarray(offset));
    return offsets;
  }

  /** Sends `piece` and breaks the connection instead of ending the request. */
  async function sendAndDrop(url: string, offset: number, piece: Uint8Array): Promise<void> {
    const gone = new AbortController();
    let sent = 0;
    const body = new ReadableStream<Uint8Array>({
      async pull(controller) {
        if (sent < piece.byteLength) {
          controller.enqueue(Uint8Array.from(piece.subarray(sent, sent + 64_000)));
          sent += 64_000;
          return;
        }
        await moment(); // let the server write what it has
        gone.abort();
        controller.error(new Error("The connection dropped."));
      },
    });
    const headers = {
      "tus-resumable": "1.0.0",
      "upload-offset": String(offset),
      "content-type": "application/offset+octet-stream",
      "x-person": "guardian-1",
    };
    const init = { method: "PATCH", headers, body, signal: gone.signal, duplex: "half" } as const;
    await expect(fetch(url, init)).rejects.toThrow();
    await moment();
  }

  const moment = () => new Promise((resolve) => setTimeout(resolve, 20));
});
