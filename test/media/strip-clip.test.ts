import { readFileSync } from "node:fs";
import { access, symlink } from "node:fs/promises";
import { join } from "node:path";
import { BufferSource, EncodedPacketSink, Input, MP4, QTFF, WEBM } from "mediabunny";
import { describe, expect, test } from "vitest";
import { probeClip } from "@/server/media/probe-clip";
import { stripClip } from "@/server/media/strip-clip";
import { type ClipShape, evenTimesMs, makeClip, makeSoundOnly, makeWebm } from "../helpers/make-clip";
import { MARKED_TEXTS, markedTags } from "../helpers/marked-tags";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";

const folder = scratchFolder();
let copies = 0;

async function stripped(bytes: Uint8Array) {
  copies += 1;
  const from = await writeScratch(folder, bytes);
  const to = join(folder, `copy-${copies}`);
  const outcome = await stripClip(from, to);
  const source = await probeClip(from);
  return { outcome, source, from, to };
}

async function goodCopy(bytes: Uint8Array) {
  const { outcome, source, to } = await stripped(bytes);
  if (outcome.problem !== null || source.problem !== null) throw new Error(`Not copied: ${outcome.problem}.`);
  return { ...outcome, source, to };
}

/** The stored bytes of every picture or sound of a file, in order. */
async function payload(bytes: Uint8Array, kind: "picture" | "sound"): Promise<Buffer> {
  const input = new Input({ source: new BufferSource(bytes), formats: [MP4, QTFF, WEBM] });
  const track = kind === "picture" ? await input.getPrimaryVideoTrack() : await input.getPrimaryAudioTrack();
  const parts: Uint8Array[] = [];
  if (track) for await (const packet of new EncodedPacketSink(track).packets()) parts.push(packet.data);
  input.dispose();
  return Buffer.concat(parts);
}

describe("the copy that is served", () => {
  const shapes: [string, ClipShape][] = [
    ["plain", {}],
    ["with sound", { hasSound: true }],
    ["turned by 90", { rotationDeg: 90 }],
    ["turned by 180", { rotationDeg: 180 }],
    ["turned by 270", { rotationDeg: 270, hasSound: true }],
    ["QuickTime", { container: "mov", hasSound: true, rotationDeg: 90 }],
    ["Matroska", { container: "mkv" }],
    ["index at the end", { index: "end", hasSound: true }],
    ["index in pieces", { index: "fragments", hasSound: true }],
    ["variable frame rate", { frameTimesMs: [0, 16.7, 33.4, 90, 95, 140.25, 300, 301] }],
    ["stored out of order", { frameTimesMs: [0, 60, 20, 40, 120, 80, 100] }],
    ["trimmed start", { frameTimesMs: evenTimesMs(30, 20).map((timeMs) => timeMs - 60), hasSound: true }],
    ["late start", { frameTimesMs: evenTimesMs(30).map((timeMs) => timeMs + 400), hasSound: true }],
    ["one frame", { frameTimesMs: [0] }],
  ];
  test.each(shapes)("shows the same frames at the same times, the same way up (%s)", async (_, shape) => {
    const { facts, source, contentType } = await goodCopy(await makeClip({ ...shape, tags: markedTags() }));
    expect(contentType).toBe("video/mp4");
    expect(facts.frameTimesMs).toHaveLength(source.frameTimesMs.length);
    for (const [index, timeMs] of facts.frameTimesMs.entries()) {
      expect(Math.abs(timeMs - (source.frameTimesMs[index] ?? Number.NaN))).toBeLessThanOrEqual(0.02);
    }
    const { rotationDeg, widthPx, heightPx, codec, hasSound, keyFrameIndexes } = source;
    expect(facts).toMatchObject({ rotationDeg, widthPx, heightPx, codec, hasSound, keyFrameIndexes });
    expect(facts).toMatchObject({ container: "mp4", tagNames: [], capturedFps: null });
  });

  test("holds no word of title, place, device or day, though the original does", async () => {
    const shape = { tags: markedTags(), trackName: "Marked track", hasSound: true };
    const marks = [...MARKED_TEXTS, "Marked track"];
    const original = Buffer.from(await makeClip({ ...shape, container: "mov", index: "end" }));
    for (const mark of marks.slice(0, 4)) expect(original.includes(mark), mark).toBe(true);
    const mp4 = Buffer.from(await makeClip(shape));
    for (const bytes of [original, mp4]) {
      const copy = readFileSync((await goodCopy(bytes)).to);
      for (const mark of marks) expect(copy.includes(mark), mark).toBe(false);
      expect(copy.includes("udta")).toBe(false);
    }
  });

  test("carries no date: the same clip copied at another hour is equal byte for byte", async () => {
    const bytes = await makeClip({ hasSound: true });
    const first = readFileSync((await goodCopy(bytes)).to);
    const movieHeader = first.indexOf("mvhd") + 8; // past the type, version and flags
    expect(first.subarray(movieHeader, movieHeader + 8)).toEqual(Buffer.alloc(8));
    await new Promise((resolve) => setTimeout(resolve, 1100)); // the stamps it would carry have a step of a second
    expect(readFileSync((await goodCopy(bytes)).to).equals(first)).toBe(true);
  });

  test("holds the very pictures and sounds of the original, not re-encoded", async () => {
    const bytes = await makeClip({ hasSound: true });
    const copy = readFileSync((await goodCopy(bytes)).to);
    for (const kind of ["picture", "sound"] as const) {
      const original = await payload(bytes, kind);
      expect(original.byteLength).toBeGreaterThan(100);
      expect((await payload(copy, kind)).equals(original)).toBe(true);
    }
  });

  test("has its index in front, so that playing starts before all of it is there", async () => {
    const copy = readFileSync((await goodCopy(await makeClip({ index: "end" }))).to);
    expect(copy.indexOf("moov")).toBeLessThan(copy.indexOf("mdat"));
  });

  test("of a WebM is a WebM, without its tags", async () => {
    const { contentType, facts, to, source } = await goodCopy(
      await makeWebm(undefined, { title: "Marked title" }),
    );
    expect(contentType).toBe("video/webm");
    expect(facts.frameTimesMs).toEqual(source.frameTimesMs);
    expect(source.tagNames).toContain("title");
    expect(facts.tagNames).toEqual([]);
    expect(readFileSync(to).includes("Marked title")).toBe(false);
  });
});

describe("what cannot be copied", () => {
  test("says the source's problem and leaves no file", async () => {
    const whole = await makeClip();
    const cases: [Uint8Array, string][] = [
      [new Uint8Array(), "empty"],
      [Buffer.from("no video ".repeat(40)), "not_video"],
      [whole.subarray(0, whole.byteLength - 40), "cut_off"],
      [await makeSoundOnly(), "not_video"],
    ];
    for (const [bytes, problem] of cases) {
      const { outcome, to } = await stripped(bytes);
      expect(outcome).toEqual({ problem, byteCount: bytes.byteLength });
      await expect(access(to)).rejects.toThrow("ENOENT");
    }
  });

  test("throws and leaves no file when the copy cannot be written", async () => {
    const from = await writeScratch(folder, await makeClip());
    await expect(stripClip(from, join(folder, "no-such-folder", "copy"))).rejects.toThrow("ENOENT");
    const full = join(folder, "full-disk");
    await symlink("/dev/full", full);
    await expect(stripClip(from, full)).rejects.toThrow("ENOSPC");
    await expect(access(full)).rejects.toThrow("ENOENT");
  });
});
