import { execFile } from "node:child_process";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { loadImage } from "@napi-rs/canvas";
import { beforeAll, describe, expect, test } from "vitest";
import { frameArtist } from "@/seed/clips/clip-frames";
import { clipParameters } from "@/seed/clips/clip-parameters";
import type { ClipOrder } from "@/seed/clips/draw-child";
import { clipFiles, drawClip } from "@/seed/clips/draw-clip";
import { kitColours } from "@/seed/clips/palette";
import { type ClipTruth, truthOf } from "@/seed/clips/truth";
import { type ClipFacts, probeClip } from "@/server/media/probe-clip";
import { scratchFolder } from "../../helpers/scratch-folder";

const folder = scratchFolder();
const SMALL = { widthPx: 160, heightPx: 90, fps: 30 } as const;

async function factsOf(path: string): Promise<ClipFacts> {
  const probe = await probeClip(path);
  if (probe.problem !== null) throw new Error(`The drawn clip was called ${probe.problem}.`);
  return probe;
}

describe("a drawn clip", () => {
  const parameters = clipParameters(SMALL);
  let truth: ClipTruth;
  let path: string;

  beforeAll(async () => {
    path = join(folder, "drawn.mp4");
    truth = await drawClip(parameters, path);
  });

  test("is an H.264 MP4 of the size asked for with every frame at the sidecar's time", async () => {
    const facts = await factsOf(path);
    expect(facts).toMatchObject({
      container: "mp4",
      widthPx: 160,
      heightPx: 90,
      rotationDeg: 0,
      hasSound: false,
    });
    expect(facts.codec).toMatch(/^avc1\./);
    expect(facts.frameTimesMs).toHaveLength(90);
    for (const [frame, timeMs] of facts.frameTimesMs.entries()) {
      expect(Math.abs(timeMs - (truth.frames[frame]?.timeMs ?? Number.NaN))).toBeLessThan(0.1);
    }
  });

  test("has its index before its pictures, so that it plays before it has all come", async () => {
    const bytes = await readFile(path);
    expect(bytes.indexOf("moov")).toBeGreaterThan(0);
    expect(bytes.indexOf("moov")).toBeLessThan(bytes.indexOf("mdat"));
  });

  test("comes with its truth and a poster, and leaves nothing else behind", async () => {
    const files = clipFiles(path);
    expect(JSON.parse(await readFile(files.truth, "utf8"))).toEqual(truth);
    const poster = await readFile(files.poster);
    expect([...poster.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
    expect(await loadImage(poster)).toMatchObject({ width: 160, height: 90 });
    expect((await readdir(folder)).filter((name) => name.startsWith("drawn")).sort()).toEqual([
      "drawn.jpg",
      "drawn.json",
      "drawn.mp4",
    ]);
  });

  test("is the same to the byte when drawn again", async () => {
    const again = join(folder, "again.mp4");
    await drawClip(parameters, again);
    expect((await readFile(again)).equals(await readFile(path))).toBe(true);
  });
});

describe("a drawn frame", () => {
  const parameters = clipParameters({ kit: 1, view: "open_side" });
  const truth = truthOf(parameters);
  const worn = kitColours(parameters);

  function colourAt(frame: number, place: readonly [number, number]): number[] {
    const pixel = frameArtist(parameters)(frame)
      .getContext("2d")
      .getImageData(Math.round(place[0]), Math.round(place[1]), 1, 1);
    return [...pixel.data.subarray(0, 3)];
  }

  // Shading changes a colour by up to about sixty steps of 255; the lane behind is further off than that.
  test.each([
    ["glove", "gloveHand", worn.glove],
    ["shirt", "midShoulder", worn.jersey],
    ["front thigh", "leadKnee", worn.trousers],
    ["front shoe", "leadAnkle", worn.socks],
  ] as const)("shows the %s where the truth has it at front foot contact", (_, joint, colour) => {
    const frame = truth.frames[truth.events.front_foot_contact];
    if (frame === undefined) throw new Error("no such frame");
    const found = colourAt(truth.events.front_foot_contact, frame.joints[joint]);
    expect(Math.max(...found.map((part, n) => Math.abs(part - (colour[n] ?? 0))))).toBeLessThan(60);
  });

  test("shows the ball where the truth has it, in the hand and in flight", () => {
    for (const frame of [truth.events.front_foot_contact, truth.events.ball_release]) {
      const ball = truth.frames[frame]?.ball;
      if (!ball) throw new Error("the ball should be in the picture");
      expect(Math.min(...colourAt(frame, ball))).toBeGreaterThan(235);
    }
  });
});

/* It runs at a low priority: on a busy machine it comes last. */
describe("the drawing process", { timeout: 120_000 }, () => {
  const run = (listPath: string) =>
    promisify(execFile)(process.execPath, ["--import", "tsx", "seed/clips/draw-child.ts", listPath]);

  async function listOf(name: string, orders: readonly ClipOrder[]): Promise<string> {
    const path = join(folder, name);
    await writeFile(path, JSON.stringify(orders));
    return path;
  }

  test("draws its list in order, says so a line at a time, and ends", async () => {
    const small = { widthPx: 64, heightPx: 36, fps: 24 };
    const paths = ["first.mp4", "second.mp4"].map((name) => join(folder, name));
    const [first = "", second = ""] = paths;
    const list = await listOf("list.json", [
      { parameters: { ...small, view: "front" }, outPath: first },
      { parameters: { ...small, view: "back", throws: "L" }, outPath: second },
    ]);
    const { stdout } = await run(list);
    expect(
      stdout
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line)),
    ).toEqual([
      { outPath: first, done: 1, of: 2 },
      { outPath: second, done: 2, of: 2 },
    ]);
    for (const path of paths) expect((await factsOf(path)).frameTimesMs).toHaveLength(72);
  });

  test("ends with a failure that names what was wrong", async () => {
    const list = await listOf("wrong.json", [
      { parameters: { ageYears: 40 }, outPath: join(folder, "never.mp4") },
    ]);
    await expect(run(list)).rejects.toMatchObject({ code: 1, stderr: expect.stringContaining("ageYears") });
    expect(await readdir(folder)).not.toContain("never.mp4");
  });
});
