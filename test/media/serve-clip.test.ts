import { randomBytes } from "node:crypto";
import { readdirSync, readlinkSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type ServedFile, serveFile } from "@/server/media/serve-clip";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";
import { startWebServer } from "../helpers/web-server";

const folder = scratchFolder();
const bytes = randomBytes(20_000_000);
let file: ServedFile;

beforeAll(async () => {
  const path = await writeScratch(folder, bytes);
  file = { path, contentType: "video/mp4", etag: "abc123", byteCount: bytes.byteLength };
});

const ask = (headers: Record<string, string> = {}, method = "GET"): Promise<Response> =>
  serveFile(new Request("http://academy.test/clip", { headers, method }), file);

const bodyOf = async (response: Response): Promise<Buffer> => Buffer.from(await response.arrayBuffer());

describe("a clip that is served", () => {
  test("comes whole, with everything that keeps it private", async () => {
    const response = await ask();
    expect(response.status).toBe(200);
    expect(Object.fromEntries(response.headers)).toEqual({
      "accept-ranges": "bytes",
      "cache-control": "private, no-store",
      "content-disposition": "inline",
      "content-length": "20000000",
      "content-security-policy": "sandbox; default-src 'none'",
      "content-type": "video/mp4",
      "cross-origin-resource-policy": "same-origin",
      etag: '"abc123"',
      "x-content-type-options": "nosniff",
    });
    expect((await bodyOf(response)).equals(bytes)).toBe(true);
  });

  test.each([
    ["bytes=0-0", 0, 1],
    ["bytes=0-1", 0, 2],
    ["bytes=1000-300999", 1000, 301_000],
    ["bytes=19999999-", 19_999_999, 20_000_000],
    ["bytes=-10", 19_999_990, 20_000_000],
    ["bytes=19999990-99999999", 19_999_990, 20_000_000],
  ])("comes in part for %s", async (range, from, to) => {
    const response = await ask({ range });
    expect(response.status).toBe(206);
    expect(response.headers.get("content-range")).toBe(`bytes ${from}-${to - 1}/20000000`);
    expect(response.headers.get("content-length")).toBe(String(to - from));
    expect((await bodyOf(response)).equals(bytes.subarray(from, to))).toBe(true);
  });

  test("has no range beyond its end, and says how long it is", async () => {
    const response = await ask({ range: "bytes=20000000-" });
    expect(response.status).toBe(416);
    expect(response.headers.get("content-range")).toBe("bytes */20000000");
    expect(response.headers.get("cache-control")).toBe("private, no-store");
    expect(await bodyOf(response)).toHaveLength(0);
  });

  test.each([
    ['"abc123"', 206],
    ['"older"', 200],
    ['W/"abc123"', 200],
    ["Wed, 21 Oct 2026 07:28:00 GMT", 200],
  ])("under If-Range %s answers %i", async (validator, status) => {
    const response = await ask({ range: "bytes=5-9", "if-range": validator });
    expect(response.status).toBe(status);
    await response.body?.cancel();
  });

  test("tells its headers and sends nothing for HEAD, which knows no ranges", async () => {
    const response = await ask({ range: "bytes=5-9" }, "HEAD");
    expect(response.status).toBe(200);
    expect(response.headers.get("content-length")).toBe("20000000");
    expect(response.body).toBeNull();
  });

  test.each(["POST", "PUT", "DELETE", "PATCH"])("cannot be %s-ed", async (method) => {
    const response = await ask({}, method);
    expect(response.status).toBe(405);
    expect(response.headers.get("allow")).toBe("GET, HEAD");
  });

  test("that is gone from the disk answers 404, one that is empty sends nothing", async () => {
    const gone = { ...file, path: join(folder, "gone") };
    const request = () => new Request("http://academy.test/clip");
    expect((await serveFile(request(), gone)).status).toBe(404);
    const empty = { ...file, path: await writeScratch(folder, ""), byteCount: 0 };
    expect(await bodyOf(await serveFile(request(), empty))).toHaveLength(0);
  });

  test("that is shorter than was said fails its stream instead of ending early", async () => {
    const short = { ...file, byteCount: bytes.byteLength + 10 };
    const response = await serveFile(new Request("http://academy.test/clip"), short);
    await expect(response.arrayBuffer()).rejects.toThrow("shorter");
    await expectNoOpenDescriptors();
  });

  test("is read again range by range to the very same bytes", async () => {
    const range = fc.tuple(fc.nat(bytes.byteLength + 50), fc.nat(400_000));
    await fc.assert(
      fc.asyncProperty(range, async ([first, length]) => {
        const response = await ask({ range: `bytes=${first}-${first + length}` });
        const expected = bytes.subarray(first, first + length + 1);
        expect(response.status).toBe(expected.byteLength === 0 ? 416 : 206);
        expect((await bodyOf(response)).equals(expected)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a viewer who goes away", () => {
  let server: Awaited<ReturnType<typeof startWebServer>>;
  beforeAll(async () => {
    server = await startWebServer((request) => serveFile(request, file));
  });
  afterAll(() => server.stop());

  test("at any moment leaves no file open (80 times over HTTP)", async () => {
    const moments = fc.sample(fc.integer({ min: 0, max: 40 }), { numRuns: 80, seed: 11 });
    let leftUnderway = 0;
    for (const readsBefore of moments) leftUnderway += (await leaveAfter(readsBefore)) ? 1 : 0;
    expect(leftUnderway).toBeGreaterThan(60);
    await expectNoOpenDescriptors();
  });

  test("before the first byte, or while waiting, leaves no file open", async () => {
    for (const isEarly of [true, false]) {
      const gone = new AbortController();
      if (isEarly) gone.abort();
      const request = new Request("http://academy.test/clip", { signal: gone.signal });
      const response = await serveFile(request, file);
      if (!isEarly) await response.body?.getReader().read();
      gone.abort();
      await expectNoOpenDescriptors();
    }
  });

  test("by cancelling leaves no file open", async () => {
    const response = await ask();
    const reader = response.body?.getReader();
    await reader?.read();
    await reader?.cancel();
    await expectNoOpenDescriptors();
  });

  /** Reads so many pieces and goes; false when the clip was over by then. */
  async function leaveAfter(readsBefore: number): Promise<boolean> {
    const gone = new AbortController();
    const response = await fetch(`${server.url}/clip`, { signal: gone.signal });
    const reader = response.body?.getReader();
    let isOver = false;
    for (let reads = 0; reads < readsBefore && !isOver; reads += 1)
      isOver = (await reader?.read())?.done ?? true;
    gone.abort();
    return !isOver;
  }
});

/** Counts this process's own descriptors on the served file; closing is asynchronous, so it is given a moment. */
async function expectNoOpenDescriptors(): Promise<void> {
  await expect.poll(() => openDescriptors(file.path), { timeout: 3000 }).toBe(0);
}

function openDescriptors(path: string): number {
  return readdirSync("/proc/self/fd").filter((descriptor) => {
    try {
      return readlinkSync(`/proc/self/fd/${descriptor}`) === path;
    } catch {
      return false; // closed between listing and looking
    }
  }).length;
}
