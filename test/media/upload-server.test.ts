import { randomBytes } from "node:crypto";
import { describe, expect, test, vi } from "vitest";
import { scratchFolder } from "../helpers/scratch-folder";
import {
  begin,
  metadataHeader,
  offsetOf,
  requestFor,
  sendPiece,
  sha256Of,
  UploadDesk,
} from "../helpers/upload-desk";

const folder = scratchFolder();
const desk = new UploadDesk(folder);

describe("sending a clip", () => {
  test("gives a relative address that says nothing, and the receiver's answer at the last byte", async () => {
    const server = desk.server();
    const bytes = randomBytes(50_000);
    const headers = { "upload-metadata": metadataHeader({ roundId: "round-1", view: "open side" }) };
    const path = await begin(server, bytes.byteLength, headers);
    expect(path).toMatch(/^\/api\/uploads\/[0-9a-f]{64}$/);
    expect((await sendPiece(server, path, 0, bytes.subarray(0, 20_000))).status).toBe(204);
    expect(desk.taken).toHaveLength(0);
    const last = await sendPiece(server, path, 20_000, bytes.subarray(20_000));
    expect(last.status).toBe(201);
    expect(last.headers.get("upload-offset")).toBe("50000");
    expect(await last.json()).toEqual({ clipId: "clip-1" });
    expect(desk.taken).toMatchObject([
      {
        uploadId: path.split("/").at(-1),
        byteCount: 50_000,
        personId: "guardian-1",
        metadata: { roundId: "round-1", view: "open side" },
        sha256: sha256Of(bytes),
      },
    ]);
  });

  test("may come whole with the first request", async () => {
    const bytes = randomBytes(3000);
    const request = requestFor({ method: "POST", body: bytes, headers: { "upload-length": "3000" } });
    const response = await desk.server().handle(request);
    expect([response.status, await response.json()]).toEqual([201, { clipId: "clip-1" }]);
    expect(response.headers.get("location")).toMatch(/[0-9a-f]{64}$/);
    expect(desk.taken[0]?.sha256).toBe(sha256Of(bytes));
  });

  test("goes on where it stopped, on a server made anew, to the same bytes", async () => {
    const bytes = randomBytes(300_000);
    const path = await begin(desk.server(), bytes.byteLength);
    for (let offset = 0; offset < bytes.byteLength; offset += 100_000) {
      const server = desk.server();
      expect(await offsetOf(server, path)).toBe(offset);
      await sendPiece(server, path, offset, bytes.subarray(offset, offset + 100_000));
    }
    expect(desk.taken.map((upload) => upload.sha256)).toEqual([sha256Of(bytes)]);
  });

  test("refuses a piece at the wrong place and keeps what it has", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    await sendPiece(server, path, 0, Buffer.alloc(40));
    for (const offset of [0, 39, 41, 100]) {
      expect((await sendPiece(server, path, offset, Buffer.alloc(10))).status).toBe(409);
    }
    expect(await offsetOf(server, path)).toBe(40);
  });

  test("refuses more bytes than were announced", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    const response = await sendPiece(server, path, 0, Buffer.alloc(200));
    expect(response.ok).toBe(false);
    expect(desk.taken).toHaveLength(0);
    expect(await offsetOf(server, path)).toBeLessThan(100);
  });

  test("tells a sender who lost the last answer the same again, and takes the clip once", async () => {
    const server = desk.server();
    const bytes = randomBytes(1000);
    const path = await begin(server, 1000);
    await sendPiece(server, path, 0, bytes);
    const anew = desk.server();
    expect(await offsetOf(anew, path)).toBe(1000);
    const again = await sendPiece(anew, path, 0, bytes);
    expect([again.status, await again.json()]).toEqual([201, { clipId: "clip-1" }]);
    expect((await sendPiece(anew, path, 0, bytes, "guardian-2")).status).toBe(404);
    expect(desk.taken).toHaveLength(1);
    expect(desk.names()).toEqual([`${path.split("/").at(-1)}.taken`]);
  });

  test("takes a whole file whose receiver failed at the first try when its sender asks again", async () => {
    const failing = desk.server({
      onFinished: async () => {
        throw new Error("The database was busy.");
      },
    });
    const bytes = randomBytes(1000);
    const path = await begin(failing, 1000);
    await expect(sendPiece(failing, path, 0, bytes)).rejects.toThrow("busy");
    expect(await offsetOf(desk.server(), path)).toBe(1000);
    expect(desk.taken.map((upload) => upload.sha256)).toEqual([sha256Of(bytes)]);
  });

  test("asks the receiver once although the sender asks for the state meanwhile", async () => {
    let release = (): void => undefined;
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    const onFinished = vi.fn(async () => {
      await gate;
      return { status: 201, body: { clipId: "clip-9" } };
    });
    const server = desk.server({ onFinished });
    const path = await begin(server, 10);
    const last = sendPiece(server, path, 0, Buffer.alloc(10));
    await vi.waitFor(() => expect(onFinished).toHaveBeenCalledTimes(1));
    const state = offsetOf(server, path);
    release();
    expect([(await last).status, await state]).toEqual([201, 10]);
    expect(onFinished).toHaveBeenCalledTimes(1);
  });

  test("may be given up by its sender, and nothing is left", async () => {
    const server = desk.server();
    const path = await begin(server, 100);
    await sendPiece(server, path, 0, Buffer.alloc(40));
    expect((await server.handle(requestFor({ method: "DELETE", path }))).status).toBe(204);
    expect(desk.names()).toEqual([]);
    expect((await server.handle(requestFor({ method: "HEAD", path }))).status).toBe(404);
  });
});
