import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frameInLoop, HeldLoop } from "@/components/clips/stage/held-loop";
import { HandClock } from "../../helpers/hand-clock";

const EVEN_MS = Array.from({ length: 100 }, (_, frame) => (frame * 1000) / 60);
const REDRAW_MS = 1000 / 60;

function looped(timesMs: readonly number[] = EVEN_MS) {
  const clock = new HandClock();
  const shown: number[] = [];
  const loop = new HeldLoop(timesMs, clock, (frame) => shown.push(frame));
  return { clock, shown, loop };
}

const frames = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, at) => from + at);

describe("the frame that is due in a loop", () => {
  it.each([
    ["at the start: the first", 0, 10],
    ["before the first has had its time", 9.8, 10],
    ["then the second", 10, 11],
    ["the last has its time as well", 109, 12],
    ["then the first again", 110, 10],
    ["laps later", 110 * 7 + 15, 11],
  ])("%s", (_name, sinceMs, frame) => {
    const timesMs = [...Array(10).fill(0), 100, 110, 130, 210];
    expect(frameInLoop(timesMs, { from: 10, to: 12 }, sinceMs)).toBe(frame);
  });

  it("lasts as long as the one before it where it is the clip's last", () => {
    const timesMs = [0, 10, 30];
    expect(frameInLoop(timesMs, { from: 0, to: 2 }, 49)).toBe(2);
    expect(frameInLoop(timesMs, { from: 0, to: 2 }, 50)).toBe(0);
  });

  it("is never beside the loop, at whatever time of whatever table", () => {
    const lengths = fc.array(fc.double({ min: 0.5, max: 90, noNaN: true }), { minLength: 2, maxLength: 80 });
    fc.assert(
      fc.property(
        lengths,
        fc.nat(),
        fc.nat(),
        fc.double({ min: 0, max: 1e7, noNaN: true }),
        (each, one, other, sinceMs) => {
          const timesMs = each.map((_, at) => each.slice(0, at).reduce((sum, length) => sum + length, 0));
          const ends = [one % each.length, other % each.length].sort((a, b) => a - b);
          const [from = 0, to = 0] = ends;
          const frame = frameInLoop(timesMs, { from, to }, sinceMs);
          expect(frame).toBeGreaterThanOrEqual(from);
          expect(frame).toBeLessThanOrEqual(to);
        },
      ),
    );
  });
});

describe("playing a loop from held pictures", () => {
  it("shows each frame once, in order, and begins again after the last", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 70 }, 40);
    clock.redraw(3 * 31, REDRAW_MS);
    expect(shown).toEqual([...frames(40, 70), ...frames(40, 70), ...frames(40, 70)]);
  });

  it("shows each frame once though the screen redraws a little early and late", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 70 }, 40);
    for (let redraw = 0; redraw < 31; redraw += 1) {
      clock.redraw(1, redraw % 2 === 0 ? REDRAW_MS - 3 : REDRAW_MS + 3);
    }
    expect(shown).toEqual(frames(40, 70));
  });

  it.each([
    [0.5, 2],
    [0.25, 4],
    [0.125, 8],
  ])("at %s of its speed shows each for %s redraws", (speed, redraws) => {
    const { clock, shown, loop } = looped();
    clock.speed = speed;
    loop.start({ from: 10, to: 20 }, 10);
    clock.redraw(11 * redraws + 1, REDRAW_MS);
    expect(shown).toEqual([...frames(10, 20), 10]);
  });

  it("goes on from the frame on the picture, or from its first where that lies beside it", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 42 }, 41);
    clock.redraw(3, REDRAW_MS);
    loop.start({ from: 40, to: 42 }, 50);
    expect(shown).toEqual([41, 42, 40, 40]);
  });

  it("changes its speed where it stands", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 70 }, 40);
    clock.redraw(11, REDRAW_MS);
    clock.speed = 0.125;
    clock.redraw(16, REDRAW_MS);
    expect(shown).toEqual(frames(40, 52));
  });

  it("leaves out what is past on a busy machine, and comes back into the lap that is due", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 70 }, 40);
    clock.redraw(2, REDRAW_MS);
    clock.redraw(1, 20 * REDRAW_MS);
    clock.redraw(1, 1000 * REDRAW_MS);
    expect(shown).toEqual([40, 41, 61, 40 + ((21 + 1000) % 31)]);
  });

  it("shows nothing after its end, and waits for no redraw", () => {
    const { clock, shown, loop } = looped();
    loop.start({ from: 40, to: 70 }, 40);
    loop.end();
    expect(loop.isRunning()).toBe(false);
    expect(clock.isAwaited()).toBe(false);
    clock.redraw(9, REDRAW_MS);
    expect(shown).toEqual([40]);
  });
});
