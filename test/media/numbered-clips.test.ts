import { writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ClipFacts, probeClip } from "@/server/media/probe-clip";
import { stripClip } from "@/server/media/strip-clip";
import { SHAPES } from "../clips/catalogue";
import { blocksOf, COLUMNS, pixelsOf, ROWS, readBlocks, storedSize, type Turn } from "../clips/frame-pattern";
import { evenTimesMs, frameNumbers, numberedMp4 } from "../clips/numbered-clip";
import { scratchFolder } from "../helpers/scratch-folder";

const folder = scratchFolder();
const picture = fc.record({
  clip: fc.integer({ min: 0, max: 31 }),
  frame: fc.integer({ min: 0, max: 2047 }),
});
const bright = (blocks: boolean[]) => blocks.map((isLight) => (isLight ? 220 : 30));

describe("a picture that carries its number", () => {
  it("is read as what it says, every clip and frame", () => {
    fc.assert(
      fc.property(picture, (each) => {
        expect(readBlocks(bright(blocksOf(each)))).toEqual(each);
      }),
    );
  });

  it("is not read turned over, from behind, or blank", () => {
    fc.assert(
      fc.property(picture, (each) => {
        const blocks = bright(blocksOf(each));
        expect(readBlocks(blocks.toReversed())).toBeNull();
        const rows = Array.from({ length: ROWS }, (_, row) =>
          blocks.slice(row * COLUMNS, (row + 1) * COLUMNS),
        );
        expect(readBlocks(rows.flatMap((row) => row.toReversed()))).toBeNull();
        expect(readBlocks(rows.toReversed().flat())).toBeNull();
      }),
    );
    expect(readBlocks(new Array(32).fill(24))).toBeNull();
    expect(readBlocks(new Array(32).fill(232))).toBeNull();
  });

  it("is not read half way between two frames", () => {
    const [one, other] = [blocksOf({ clip: 3, frame: 7 }), blocksOf({ clip: 3, frame: 8 })].map(bright);
    expect(readBlocks((one ?? []).map((each, index) => (each + (other?.[index] ?? 0)) / 2))).toBeNull();
  });

  it("is stored so that its turn shows it upright", () => {
    for (const turn of [0, 90, 180, 270] as const) {
      expect(readBlocks(middles(pixelsOf({ clip: 5, frame: 321 }, turn), turn)), `${turn}`).toEqual({
        clip: 5,
        frame: 321,
      });
    }
  });
});

describe("a numbered clip", () => {
  for (const [name, shape] of Object.entries(SHAPES)) {
    it(`of ${name} has the frames and times it was given, and keeps them through the copy`, async () => {
      const [path, copy] = [join(folder, "numbered.mp4"), join(folder, "copy")];
      writeFileSync(path, await numberedMp4({ ...shape, clip: 1 }));
      const wanted = shape.timesMs.filter((timeMs) => timeMs >= 0);
      expect((await stripClip(path, copy)).problem).toBeNull();
      for (const film of [path, copy]) {
        const { frameTimesMs, rotationDeg } = await factsOf(film);
        expect(rotationDeg).toBe(shape.turn ?? 0);
        expect(frameTimesMs).toHaveLength(wanted.length);
        const off = frameTimesMs.map((timeMs, frame) => Math.abs(timeMs - (wanted[frame] ?? 0)));
        expect(Math.max(...off)).toBeLessThan(0.2);
      }
    });
  }

  it("counts from its first shown frame, and tells those trimmed off from the rest", () => {
    const timesMs = evenTimesMs(5, 10).map((timeMs) => timeMs - 200);
    expect(frameNumbers({ timesMs })).toEqual([2047, 2046, 0, 1, 2]);
  });
});

async function factsOf(path: string): Promise<ClipFacts> {
  const probe = await probeClip(path);
  if (probe.problem !== null) throw new Error(probe.problem);
  return probe;
}

/** The brightness in the middle of each block of a stored picture, seen after its turn. */
function middles(pixels: Uint8Array, turn: Turn): number[] {
  const { widthPx, heightPx } = storedSize(turn);
  const at = (x: number, y: number) => pixels[(y * widthPx + x) * 4] ?? 0;
  const stored = {
    0: (x: number, y: number) => at(x, y),
    90: (x: number, y: number) => at(y, heightPx - 1 - x),
    180: (x: number, y: number) => at(widthPx - 1 - x, heightPx - 1 - y),
    270: (x: number, y: number) => at(widthPx - 1 - y, x),
  }[turn];
  return Array.from({ length: COLUMNS * ROWS }, (_, block) =>
    stored((block % COLUMNS) * 16 + 8, Math.floor(block / COLUMNS) * 24 + 12),
  );
}
