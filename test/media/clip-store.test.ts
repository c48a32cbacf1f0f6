import { createHash, randomBytes } from "node:crypto";
import { access, mkdir, readFile, statfs } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  clipPath,
  hasRoomFor,
  keepClipPart,
  makeClipFolder,
  newClipName,
  removeClip,
  reservedBytes,
  sha256OfFile,
} from "@/server/media/clip-store";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";

const folder = scratchFolder();
const baseDir = join(folder, "clips");

describe("where clips lie", () => {
  test("names are opaque and never the same", () => {
    const names = new Set(Array.from({ length: 500 }, newClipName));
    expect(names.size).toBe(500);
    for (const name of names) expect(name).toMatch(/^[0-9a-f]{32}$/);
  });

  test.each([
    "",
    "..",
    "../../etc/passwd",
    "a".repeat(31),
    "A".repeat(32),
    `${"a".repeat(31)}/`,
    `${"a".repeat(32)}\0`,
  ])("no path is made for the name %j", (name) => {
    expect(() => clipPath(baseDir, name, "copy")).toThrow(RangeError);
  });

  test("a part is moved to its place whole, and replaces the part before it", async () => {
    const name = newClipName();
    for (const text of ["first", "second"]) {
      const from = await writeScratch(folder, text);
      const path = await keepClipPart(baseDir, name, "copy", from);
      expect(path).toBe(join(baseDir, name.slice(0, 2), name, "copy"));
      expect(await readFile(path, "utf8")).toBe(text);
      await expect(access(from)).rejects.toThrow("ENOENT");
    }
  });

  test("a part whose file is gone is an error and leaves the part before it", async () => {
    const name = newClipName();
    const path = await keepClipPart(baseDir, name, "poster", await writeScratch(folder, "kept"));
    await expect(keepClipPart(baseDir, name, "poster", join(folder, "gone"))).rejects.toThrow("ENOENT");
    expect(await readFile(path, "utf8")).toBe("kept");
  });

  test("removing a clip takes every part and no neighbour, and may be done twice", async () => {
    const name = newClipName();
    const neighbour = name.slice(0, 31) + (name.endsWith("0") ? "1" : "0");
    await makeClipFolder(baseDir, name);
    const parts = ["copy", "poster"] as const;
    for (const part of parts) await keepClipPart(baseDir, name, part, await writeScratch(folder, part));
    const kept = await keepClipPart(baseDir, neighbour, "copy", await writeScratch(folder, "neighbour"));
    await removeClip(baseDir, name);
    await removeClip(baseDir, name);
    for (const part of parts) await expect(access(clipPath(baseDir, name, part))).rejects.toThrow("ENOENT");
    expect(await readFile(kept, "utf8")).toBe("neighbour");
  });
});

describe("the reserve on the disk", () => {
  test.each([
    [20_000_000_000, 2_000_000_000],
    [50_000_000_000, 5_000_000_000],
    [1_000_000_000_000, 5_000_000_000],
    [0, 0],
  ])("of %i bytes is %i", (diskBytes, expected) => {
    expect(reservedBytes(diskBytes)).toBe(expected);
  });

  test("refuses what would eat into it and takes what would not", async () => {
    await mkdir(baseDir, { recursive: true });
    const disk = await statfs(baseDir);
    const freeBytes = disk.bavail * disk.bsize;
    const slackBytes = 200_000_000; // other programs write meanwhile
    const reserve = { fraction: 1, atMostBytes: Math.floor(freeBytes / 2) };
    expect(await hasRoomFor(baseDir, freeBytes / 2 - slackBytes, reserve)).toBe(true);
    expect(await hasRoomFor(baseDir, freeBytes / 2 + slackBytes, reserve)).toBe(false);
    expect(await hasRoomFor(baseDir, 0, { fraction: 1, atMostBytes: Number.MAX_SAFE_INTEGER })).toBe(false);
    expect(await hasRoomFor(baseDir, 0, { fraction: 0, atMostBytes: 0 })).toBe(true);
  });
});

test("the hash of a file is that of its bytes", async () => {
  const bytes = randomBytes(700_001);
  const path = await writeScratch(folder, bytes);
  expect(await sha256OfFile(path)).toBe(createHash("sha256").update(bytes).digest("hex"));
  // SHA-256 of no bytes, FIPS 180-4 example value
  expect(await sha256OfFile(await writeScratch(folder, ""))).toBe(
    "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
  );
});
