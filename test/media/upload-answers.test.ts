import { describe, expect, test } from "vitest";
import { probeRefusalInWords } from "@/server/domain/clips/probe";
import { probeClip } from "@/server/media/probe-clip";
import { makeClip } from "../helpers/make-clip";
import { scratchFolder } from "../helpers/scratch-folder";
import { begin, metadataHeader, offsetOf, requestFor, sendPiece, UploadDesk } from "../helpers/upload-desk";

const folder = scratchFolder();
const desk = new UploadDesk(folder);

describe("what is refused", () => {
  test("a file over the limit, before a byte is sent, saying both sizes", async () => {
    const request = requestFor({ method: "POST", headers: { "upload-length": "5000001" } });
    const response = await desk.server().handle(request);
    expect(response.status).toBe(413);
    expect(await response.json()).toEqual({
      problem: "too_big",
      sentence: probeRefusalInWords({ kind: "too_big", byteCount: 5_000_001, maxBytes: 5_000_000 }),
    });
    expect(desk.names()).toEqual([]);
    await begin(desk.server(), 5_000_000);
  });

  test.each([
    [{}],
    [{ "upload-defer-length": "1" }],
    [{ "upload-length": "-5" }],
    [{ "upload-length": "1e99" }],
    [{ "upload-length": "many" }],
  ])("a file of no stated length (%o)", async (headers) => {
    const response = await desk.server().handle(requestFor({ method: "POST", headers: { ...headers } }));
    expect(response.status).toBe(400);
    expect(desk.names()).toEqual([]);
  });

  test("a file that would eat into the reserve, at the start and at every piece", async () => {
    const full = { reserve: { fraction: 1, atMostBytes: Number.MAX_SAFE_INTEGER } };
    const path = await begin(desk.server(), 100);
    const start = await desk
      .server(full)
      .handle(requestFor({ method: "POST", headers: { "upload-length": "1" } }));
    const piece = await sendPiece(desk.server(full), path, 0, Buffer.alloc(100));
    for (const response of [start, piece]) {
      expect(response.status).toBe(507);
      expect(await response.json()).toMatchObject({ problem: "no_room" });
    }
    expect(await offsetOf(desk.server(), path)).toBe(0);
    await sendPiece(desk.server(), path, 0, Buffer.alloc(100));
    expect(desk.taken).toHaveLength(1);
  });

  test("a file the receiver does not want: deleted, with the receiver's words", async () => {
    const server = desk.server({
      onFinished: async ({ path }) => {
        const { problem } = await probeClip(path);
        const sentence = "This file is not a video.";
        return problem === null ? { status: 201, body: {} } : { status: 422, body: { problem, sentence } };
      },
    });
    const text = Buffer.from("not a video at all");
    const path = await begin(server, text.byteLength);
    const response = await sendPiece(server, path, 0, text);
    expect(response.status).toBe(422);
    expect(await response.json()).toEqual({ problem: "not_video", sentence: "This file is not a video." });
    expect(desk.names()).toEqual([]);

    const emptyFile = await server.handle(requestFor({ method: "POST", headers: { "upload-length": "0" } }));
    expect([emptyFile.status, await emptyFile.json()]).toMatchObject([422, { problem: "empty" }]);
    expect(desk.names()).toEqual([]);

    const clip = await makeClip();
    const clipPath = await begin(server, clip.byteLength);
    expect((await sendPiece(server, clipPath, 0, clip)).status).toBe(201);
  });

  test("any other method, and a method hidden in a header", async () => {
    const server = desk.server();
    const path = await begin(server, 10);
    await sendPiece(server, path, 0, Buffer.from("half"));
    for (const method of ["GET", "PUT", "OPTIONS"]) {
      const response = await server.handle(requestFor({ method, path }));
      expect([response.status, response.headers.get("allow")]).toEqual([405, "POST, PATCH, HEAD, DELETE"]);
    }
    const hidden = { method: "HEAD", path, headers: { "x-http-method-override": "DELETE" } };
    expect((await server.handle(requestFor(hidden))).status).toBe(200);
    expect(await offsetOf(server, path)).toBe(4);
  });

  test("another site's page is told nothing it could read", async () => {
    const headers = { "upload-length": "10", origin: "https://elsewhere.test" };
    const response = await desk.server().handle(requestFor({ method: "POST", headers }));
    expect(response.headers.has("access-control-allow-origin")).toBe(false);
  });
});

describe("who may send", () => {
  test("nobody who is not signed in, at any step", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    for (const method of ["POST", "PATCH", "HEAD", "DELETE"]) {
      for (const target of [path, `/api/uploads/${"0".repeat(64)}`]) {
        const response = await server.handle(requestFor({ method, path: target, person: null }));
        expect(response.status).toBe(401);
      }
    }
    expect(await offsetOf(server, path)).toBe(0);
  });

  test("nobody for a round that is not theirs", async () => {
    const headers = { "upload-length": "10", "upload-metadata": metadataHeader({ roundId: "round-2" }) };
    const response = await desk.server().handle(requestFor({ method: "POST", headers }));
    expect(response.status).toBe(403);
    expect(desk.names()).toEqual([]);
  });

  test("only the sender goes on: to another person the upload does not exist, in the very same words", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    await sendPiece(server, path, 0, Buffer.alloc(40, 1));
    for (const method of ["PATCH", "HEAD", "DELETE"]) {
      const answers = [];
      for (const target of [path, `/api/uploads/${"0".repeat(64)}`, "/api/uploads/..%2f..%2fetc"]) {
        const headers = { "upload-offset": "40", "content-type": "application/offset+octet-stream" };
        const request = requestFor({ method, path: target, person: "guardian-2", headers });
        const response = await server.handle(request);
        answers.push([response.status, await response.text(), Object.fromEntries(response.headers)]);
      }
      expect(answers[0]?.[0]).toBe(404);
      expect(answers[1]).toEqual(answers[0]);
      expect(answers[2]).toEqual(answers[0]);
    }
    expect(await offsetOf(server, path)).toBe(40);
  });

  test("a right that ends in between ends the upload too", async () => {
    const path = await begin(desk.server(), 100);
    const withdrawn = desk.server({ authorise: async () => ({ ok: false, status: 403 }) });
    expect((await sendPiece(withdrawn, path, 0, Buffer.alloc(100))).status).toBe(404);
    expect(await offsetOf(desk.server(), path)).toBe(0);
  });

  test("a sender cannot name another person as the sender", async () => {
    const server = desk.server();
    const headers = { "upload-metadata": metadataHeader({ sentBy: "guardian-2", view: "front" }) };
    const path = await begin(server, 10, headers);
    expect((await sendPiece(server, path, 0, Buffer.alloc(10), "guardian-2")).status).toBe(404);
    expect((await sendPiece(server, path, 0, Buffer.alloc(10))).status).toBe(201);
    expect(desk.taken).toMatchObject([{ personId: "guardian-1", metadata: { view: "front" } }]);
  });
});
