import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type ClipFacts, MAX_FRAMES, probeClip } from "@/server/media/probe-clip";
import {
  type ClipShape,
  evenTimesMs,
  makeClip,
  makeSoundOnly,
  makeWebm,
  STORED_HEIGHT_PX,
  STORED_WIDTH_PX,
} from "../helpers/make-clip";
import { markedTags } from "../helpers/marked-tags";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";

const folder = scratchFolder();

const probed = async (bytes: Uint8Array | string) => probeClip(await writeScratch(folder, bytes));

async function factsOf(bytes: Uint8Array): Promise<ClipFacts> {
  const probe = await probed(bytes);
  if (probe.problem !== null) throw new Error(`A good clip was called ${probe.problem}.`);
  return probe;
}

function expectTimes(actualMs: number[], expectedMs: number[], withinMs: number): void {
  expect(actualMs).toHaveLength(expectedMs.length);
  for (const [index, timeMs] of expectedMs.entries()) {
    expect(Math.abs((actualMs[index] ?? Number.NaN) - timeMs)).toBeLessThanOrEqual(withinMs);
  }
}

describe("a readable clip", () => {
  test("tells size, turn, codec, length, key frames and sound", async () => {
    const bytes = await makeClip({ hasSound: true });
    const facts = await factsOf(bytes);
    expect(facts).toMatchObject({
      problem: null,
      container: "mp4",
      byteCount: bytes.byteLength,
      durationMs: 500,
      widthPx: STORED_WIDTH_PX,
      heightPx: STORED_HEIGHT_PX,
      rotationDeg: 0,
      keyFrameIndexes: [0, 10, 20],
      capturedFps: null,
      hasSound: true,
      tagNames: [],
    });
    expect(facts.codec).toMatch(/^avc1\./);
    expectTimes(facts.frameTimesMs, evenTimesMs(30), 0.02);
  });

  const shapes: [string, ClipShape, Partial<ClipFacts>][] = [
    ["an index at the end", { index: "end" }, { container: "mp4", hasSound: false }],
    ["an index in pieces", { index: "fragments", hasSound: true }, { container: "mp4", hasSound: true }],
    ["QuickTime", { container: "mov", hasSound: true }, { container: "mov", hasSound: true }],
    ["Matroska", { container: "mkv" }, { container: "mkv" }],
    ["one frame only", { frameTimesMs: [0] }, { frameTimesMs: [0], keyFrameIndexes: [0] }],
    ["a quarter turn", { rotationDeg: 90 }, { rotationDeg: 90, widthPx: 64, heightPx: 96 }],
    ["a half turn", { rotationDeg: 180 }, { rotationDeg: 180, widthPx: 96, heightPx: 64 }],
    ["three quarters", { rotationDeg: 270 }, { rotationDeg: 270, widthPx: 64, heightPx: 96 }],
    ["a captured rate", { tags: markedTags(239.5) }, { capturedFps: 239.5 }],
    ["a senseless captured rate", { tags: markedTags(-1) }, { capturedFps: null }],
  ];
  test.each(shapes)("is read with %s", async (_, shape, expected) => {
    expect(await factsOf(await makeClip(shape))).toMatchObject(expected);
  });

  test("names the tags it carries", async () => {
    const { tagNames } = await factsOf(await makeClip({ tags: markedTags() }));
    expect(tagNames).toContain("com.apple.quicktime.location.ISO6709");
    expect(tagNames).toContain("title");
  });

  test("keeps the real times of a variable frame rate", async () => {
    const timesMs = [0, 16.7, 33.4, 90, 95, 140.25, 300, 301];
    expectTimes((await factsOf(await makeClip({ frameTimesMs: timesMs }))).frameTimesMs, timesMs, 0.02);
  });

  test("lists frames as shown when they are stored in another order", async () => {
    const storedMs = [0, 60, 20, 40, 120, 80, 100];
    const { frameTimesMs } = await factsOf(await makeClip({ frameTimesMs: storedMs }));
    expectTimes(frameTimesMs, [0, 20, 40, 60, 80, 100, 120], 0.02);
  });

  test("leaves out frames trimmed off before the start", async () => {
    const storedMs = evenTimesMs(30, 20).map((timeMs) => timeMs - 60);
    const facts = await factsOf(await makeClip({ frameTimesMs: storedMs }));
    expectTimes(facts.frameTimesMs, evenTimesMs(27, 20), 0.02);
    expect(facts.keyFrameIndexes).toEqual([7, 17]);
  });

  test("reads WebM to the millisecond its times are kept in", async () => {
    const facts = await factsOf(await makeWebm(evenTimesMs(30)));
    expect(facts).toMatchObject({ container: "webm", codec: "vp8", keyFrameIndexes: [0, 10, 20] });
    expectTimes(facts.frameTimesMs, evenTimesMs(30), 0.51);
  });
});

describe("a file that is no clip", () => {
  test.each([
    ["nothing at all", new Uint8Array(), "empty"],
    ["text with a video's name", "Pitch 1: front side open. ".repeat(200), "not_video"],
    ["three bytes", "abc", "not_video"],
    [
      "a JPEG picture",
      Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1]),
      "not_video",
    ],
    ["a WebM beginning and then junk", Buffer.concat([ebmlHeader(), Buffer.alloc(500, 0xa7)]), "not_video"],
    ["an MP4 beginning and then junk", Buffer.concat([fileTypeBox(), Buffer.alloc(500, 0x03)]), "cut_off"],
    ["an MP4 beginning and nothing more", fileTypeBox(), "cut_off"],
  ] as const)("is refused: %s", async (_, bytes, problem) => {
    expect(await probed(bytes)).toEqual({ problem, byteCount: Buffer.from(bytes).byteLength });
  });

  test("is refused: sound without a picture", async () => {
    expect(await probed(await makeSoundOnly())).toMatchObject({ problem: "not_video" });
  });

  test("is refused: a video whose every frame was trimmed off", async () => {
    const frameTimesMs = evenTimesMs(5, 10).map((timeMs) => timeMs - 500);
    expect(await probed(await makeClip({ frameTimesMs }))).toMatchObject({ problem: "no_frames" });
  });

  test("is refused: more frames than any clip has, and not one fewer", async () => {
    const tooMany = await makeClip({ frameTimesMs: evenTimesMs(MAX_FRAMES + 1, 1) });
    expect(await probed(tooMany)).toMatchObject({ problem: "too_many_frames" });
    const atMost = await factsOf(await makeClip({ frameTimesMs: evenTimesMs(MAX_FRAMES, 1) }));
    expect(atMost.frameTimesMs).toHaveLength(MAX_FRAMES);
  }, 60_000);

  test("that does not exist is an error, not an answer", async () => {
    await expect(probeClip(join(folder, "missing"))).rejects.toThrow("ENOENT");
  });

  test("with damaged tables gets an answer, whichever byte is damaged", async () => {
    const whole = await makeClip({ hasSound: true });
    for (let at = 0; at < 1500; at += 17) {
      const damaged = Buffer.from(whole);
      damaged[at] = (damaged[at] ?? 0) ^ 0xff;
      expect(await probed(damaged)).toHaveProperty("problem");
    }
  }, 60_000);
});

describe("a clip that lost its end", () => {
  const layouts: [string, ClipShape][] = [
    ["index in front", { index: "front" }],
    ["index in front, with sound", { index: "front", hasSound: true }],
    ["index at the end", { index: "end" }],
    ["index at the end, with sound", { index: "end", hasSound: true }],
    ["QuickTime, index at the end", { container: "mov", index: "end", hasSound: true }],
  ];
  test.each(layouts)("is called cut off wherever it ends (%s)", async (_, shape) => {
    const whole = await makeClip(shape);
    const step = Math.ceil(whole.byteLength / 150);
    const lengths = [whole.byteLength - 1, whole.byteLength - 4, ...boxEnds(whole).slice(0, -1)];
    for (let length = 8; length < whole.byteLength; length += step) lengths.push(length);
    for (const length of lengths) {
      const probe = await probed(whole.subarray(0, length));
      expect(probe, `after ${length} of ${whole.byteLength} bytes`).toEqual({
        problem: "cut_off",
        byteCount: length,
      });
    }
  });

  test("is called cut off when it is a WebM that says how long it is", async () => {
    const whole = await makeWebm();
    for (const length of [100, 700, 3000, whole.byteLength - 1]) {
      expect(await probed(whole.subarray(0, length))).toMatchObject({ problem: "cut_off" });
    }
  });

  test("is called cut off when its last fragment is not whole", async () => {
    const whole = await makeClip({ index: "fragments", hasSound: true });
    const ends = boxEnds(whole);
    for (const end of ends.slice(2, -1)) {
      for (const length of [end - 3, end + 5]) {
        expect(await probed(whole.subarray(0, length))).toMatchObject({ problem: "cut_off" });
      }
    }
  });
});

function ebmlHeader(): Buffer {
  return Buffer.from([0x1a, 0x45, 0xdf, 0xa3, 0x84, 0x42, 0x86, 0x81, 0x01]);
}

function fileTypeBox(): Buffer {
  return Buffer.concat([Buffer.from([0, 0, 0, 16]), Buffer.from("ftypisom"), Buffer.from([0, 0, 2, 0])]);
}

/** Where the outermost boxes of an MP4 end. */
function boxEnds(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const ends: number[] = [];
  for (let at = 0; at < bytes.byteLength; ) {
    const short = view.getUint32(at);
    at += short === 1 ? Number(view.getBigUint64(at + 8)) : short;
    ends.push(at);
  }
  return ends;
}
