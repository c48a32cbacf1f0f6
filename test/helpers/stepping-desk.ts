import { FrameWindow } from "@/components/clips/stage/frame-window";
import type { Place } from "@/components/clips/stage/place";
import { Stepping } from "@/components/clips/stage/stepping";
import { CountingSource, quiet } from "./counting-source";
import { HandClock } from "./hand-clock";

/** Frames of the film, 16 ms each. */
export const COUNT = 100;

/** A film whose seeks take a few turns, and everything that is told of where its picture stands. */
export function steppingDesk({ hasWindow = true, misses = [] as number[] } = {}) {
  const source = new CountingSource(20);
  const seeks: number[] = [];
  const places: Place[] = [];
  const clock = new HandClock();
  const film = { seeking: false, playing: false, ended: false };
  let windows = 0;
  const stepping: Stepping = new Stepping(
    {
      frameTimesMs: Array.from({ length: COUNT }, (_, frame) => frame * 16),
      film: {
        seek: async (frame, signal) => {
          seeks.push(frame);
          film.seeking = true;
          await quiet(5);
          film.seeking = false;
          if (signal.aborted) return false;
          const shown = misses.includes(frame) ? frame - 1 : frame;
          stepping.filmTold(shown);
          return shown === frame;
        },
        moveTo: (frame) => seeks.push(frame),
        isSeeking: () => film.seeking,
        play: async () => {
          film.playing = true;
          film.ended = false;
        },
        pause: () => {
          film.playing = false;
        },
        isPlaying: () => film.playing,
        hasEnded: () => film.ended,
      },
      clock,
      openWindow: async (events) => {
        windows += 1;
        await quiet(2);
        return hasWindow ? new FrameWindow(source, COUNT, events) : null;
      },
      paint: (held) => held.paint(undefined as never),
      tell: (place) => places.push(place),
    },
    0,
  );
  const place = () => places.at(-1);
  return { stepping, source, film, clock, seeks, places, place, windows: () => windows };
}

/** The same once its window is open, at the start of the film. */
export async function opened(options?: Parameters<typeof steppingDesk>[0]) {
  const all = steppingDesk(options);
  all.stepping.ready();
  await quiet();
  all.seeks.length = 0;
  return all;
}
