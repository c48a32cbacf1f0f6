import { describe, expect, it } from "vitest";
import { FrameWindow } from "@/components/clips/stage/frame-window";
import { CountingSource, quiet } from "../../helpers/counting-source";

function windowOf(most: number, count = 200) {
  const source = new CountingSource(most);
  const told = { held: [] as number[], failed: 0 };
  const window = new FrameWindow(source, count, {
    onHeld: (frame) => told.held.push(frame),
    onFailed: () => {
      told.failed += 1;
    },
  });
  const held = () => Array.from({ length: count }, (_, frame) => frame).filter((frame) => window.at(frame));
  return { source, told, window, held };
}

const frames = (from: number, to: number) => Array.from({ length: to - from }, (_, at) => from + at);

describe("the window of decoded pictures", () => {
  it("decodes nothing before it is aimed", async () => {
    const { source } = windowOf(30);
    await quiet();
    expect(source.decoded).toEqual([]);
  });

  it("fills round the picture, its own frame first", async () => {
    const { window, held, told } = windowOf(30);
    window.aim(50);
    await quiet();
    expect(told.held[0]).toBe(50);
    expect(held()).toEqual(frames(40, 70));
  });

  it("never holds more than it may, wherever the picture goes, and closes all the rest", async () => {
    const { window, source, held } = windowOf(30);
    for (const frame of [50, 51, 60, 75, 10, 11, 190, 189, 188, 120, 0, 199]) {
      window.aim(frame);
      await quiet(20);
    }
    await quiet();
    expect(held().length).toBeLessThanOrEqual(30);
    expect(source.open.size).toBe(held().length);
    expect(source.mostOpen).toBeLessThanOrEqual(31);
  });

  it("has the next frame of every step on and back, when the steps leave it the time", async () => {
    const { window } = windowOf(30);
    window.aim(50);
    await quiet();
    const path = [...frames(51, 110), ...frames(60, 109).reverse()];
    for (const frame of path) {
      expect(window.at(frame)?.frame, `frame ${frame}`).toBe(frame);
      window.aim(frame);
      await quiet(40);
    }
  });

  it("decodes a frame again only when it was let go, and not for each step", async () => {
    const { window, source } = windowOf(30);
    window.aim(50);
    await quiet();
    for (const frame of frames(51, 80)) {
      window.aim(frame);
      await quiet(40);
    }
    expect(source.decoded.length).toBe(new Set(source.decoded).size);
  });

  it("gives up a run when the picture has gone elsewhere", async () => {
    const { window, source } = windowOf(30);
    window.aim(20);
    await quiet(3);
    window.aim(150);
    await quiet(6);
    expect(source.decoded.filter((frame) => frame < 100).length).toBeLessThan(8);
    expect(window.at(150)?.frame).toBe(150);
  });

  it("holds a run whole wherever the picture is, then what lies round the picture again", async () => {
    const { window, source, held } = windowOf(30);
    window.aim(50);
    await quiet();
    window.holdWhole({ from: 100, to: 130 });
    expect(window.holds({ from: 100, to: 130 })).toBe(false);
    await quiet();
    expect(window.holds({ from: 100, to: 130 })).toBe(true);
    expect(held()).toEqual(frames(100, 130));
    expect(source.mostOpen).toBeLessThanOrEqual(31);
    window.aim(50);
    await quiet();
    expect(held()).toEqual(frames(40, 70));
  });

  it("takes no run that is more than it may hold", async () => {
    const { window, source, held } = windowOf(30);
    window.aim(50);
    await quiet();
    const before = source.decoded.length;
    window.holdWhole({ from: 100, to: 131 });
    await quiet();
    expect(source.decoded.length).toBe(before);
    expect(held()).toEqual(frames(40, 70));
  });

  it("rests when it is told to, keeps what it has, and goes on with the next aim", async () => {
    const { window, source, held } = windowOf(30);
    window.aim(50);
    await quiet(5);
    window.rest();
    await quiet();
    const before = held().length;
    expect(before).toBeLessThan(8);
    expect(source.open.size).toBe(before);
    expect(window.isComing(60)).toBe(false);
    window.aim(50);
    expect(window.isComing(60)).toBe(true);
    await quiet();
    expect(held()).toEqual(frames(40, 70));
  });

  it("lets everything go when it is closed, that which was on its way as well", async () => {
    const { window, source, told } = windowOf(30);
    window.aim(50);
    await quiet(5);
    window.close();
    await quiet();
    expect(source.open.size).toBe(0);
    expect(source.isClosed).toBe(true);
    expect(told.failed).toBe(0);
    window.aim(60);
    await quiet();
    expect(source.open.size).toBe(0);
  });

  it.each([
    ["breaks", (source: CountingSource) => Object.assign(source, { breaksAt: 55 })],
    ["does not give a frame of the table", (source: CountingSource) => source.lost.add(55)],
  ])("says that it failed when its source %s, and lets everything go", async (_how, harm) => {
    const { window, source, told } = windowOf(30);
    harm(source);
    window.aim(50);
    await quiet();
    expect(told.failed).toBe(1);
    expect(source.open.size).toBe(0);
    expect(source.isClosed).toBe(true);
  });
});
