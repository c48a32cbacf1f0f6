import { describe, expect, it } from "vitest";
import { quiet } from "../../helpers/counting-source";
import { COUNT, opened } from "../../helpers/stepping-desk";

const SPAN = { from: 20, to: 30 };

/** A loop that is played from held pictures. */
async function looping() {
  const all = await opened();
  all.stepping.loopIn(SPAN);
  all.stepping.start(SPAN.from);
  for (const frame of [20, 21, 22]) all.stepping.filmTold(frame);
  await quiet();
  all.clock.redraw(1, 16);
  return all;
}

describe("a loop that fits into the window", () => {
  it("is played by the film until it is held whole, then from what is held, the film standing", async () => {
    const { stepping, film, source, places, clock } = await opened();
    stepping.loopIn(SPAN);
    stepping.start(SPAN.from);
    expect(film.playing).toBe(true);
    for (const frame of [20, 21, 22]) stepping.filmTold(frame);
    expect(places.at(-1)).toMatchObject({ frame: 22, shownBy: "film", isLooping: false });
    await quiet();
    expect(film.playing).toBe(false);
    expect(places.at(-1)).toMatchObject({ frame: 22, wanted: 22, shownBy: "canvas", isLooping: true });
    places.length = 0;
    clock.redraw(26, 16);
    const laps = [23, 24, 25, 26, 27, 28, 29, 30, 20, 21, 22];
    expect(places.map(({ frame }) => frame)).toEqual([...laps, ...laps, 23, 24, 25]);
    expect(source.painted.slice(-3)).toEqual([23, 24, 25]);
  });

  it("is played from held pictures at once where they are there", async () => {
    const { stepping, film, seeks, place } = await opened();
    stepping.loopIn({ from: 3, to: 9 });
    stepping.start();
    expect(seeks).toEqual([]);
    expect(film.playing).toBe(false);
    expect(place()).toMatchObject({ frame: 3, shownBy: "canvas", isLooping: true });
  });

  it("does not heed a picture of the film that comes late, nor its standing still", async () => {
    const { stepping, place, clock } = await looping();
    stepping.filmTold(33);
    stepping.filmStopped();
    clock.redraw(1, 16);
    expect(place()).toMatchObject({ frame: 23, shownBy: "canvas", isLooping: true });
  });

  it("stops on the frame on the picture, from which steps go on", async () => {
    const { stepping, place, clock } = await looping();
    clock.redraw(3, 16);
    stepping.stop();
    clock.redraw(3, 16);
    expect(place()).toMatchObject({ frame: 25, shownBy: "canvas", isLooping: false });
    stepping.show(stepping.aim() + 1);
    expect(place()).toMatchObject({ frame: 26, shownBy: "canvas", isExact: true });
    stepping.start();
    expect(place()).toMatchObject({ frame: 26, isLooping: true });
  });

  it("ends with a step", async () => {
    const { stepping, place, clock } = await looping();
    stepping.show(stepping.aim() - 1);
    clock.redraw(3, 16);
    expect(place()).toMatchObject({ frame: 21, wanted: 21, isLooping: false });
  });

  it("that is taken away lets the film go on from the frame on the picture", async () => {
    const { stepping, film, seeks, place, clock } = await looping();
    seeks.length = 0;
    stepping.loopIn(null);
    clock.redraw(3, 16);
    expect(seeks).toEqual([22]);
    expect(film.playing).toBe(true);
    expect(place()).toMatchObject({ frame: 22, shownBy: "canvas", isLooping: true });
    for (const frame of [22, 23]) stepping.filmTold(frame);
    expect(place()).toMatchObject({ frame: 23, shownBy: "film", isLooping: false });
  });

  it("that becomes another is played from its start where the picture lies beside it", async () => {
    const { stepping, place, clock } = await looping();
    stepping.loopIn({ from: 24, to: 28 });
    expect(place()).toMatchObject({ frame: 24, isLooping: true });
    clock.redraw(6, 16);
    expect(place()?.frame).toBe(24);
  });

  it("is let go with a hidden page: the film goes on, and hands over again once somebody looks", async () => {
    const { stepping, source, film, place } = await looping();
    stepping.letGo();
    await quiet();
    expect(source.open.size).toBe(0);
    expect(film.playing).toBe(true);
    stepping.filmTold(24);
    expect(place()).toMatchObject({ frame: 24, shownBy: "film", isLooping: false });
    stepping.takeUp();
    await quiet();
    expect(place()).toMatchObject({ frame: 24, shownBy: "canvas", isLooping: true });
  });

  it("ends with its clip", async () => {
    const { stepping, source, clock, places } = await looping();
    const told = places.length;
    stepping.end();
    clock.redraw(3, 16);
    expect(places.length).toBe(told);
    expect(clock.isAwaited()).toBe(false);
    expect(source.open.size).toBe(0);
  });
});

describe("a loop that is longer than the window", () => {
  it("is played by the film, with nothing decoded meanwhile", async () => {
    const { stepping, film, source, place } = await opened();
    stepping.loopIn({ from: 20, to: 50 });
    stepping.start(20);
    const before = source.decoded.length;
    stepping.filmTold(20);
    await quiet();
    expect(film.playing).toBe(true);
    expect(source.decoded.length).toBe(before);
    expect(place()).toMatchObject({ frame: 20, shownBy: "film", isLooping: false });
  });

  it("goes back when the film has come to its end", async () => {
    const { stepping, film, seeks } = await opened();
    stepping.loopIn({ from: 20, to: COUNT - 1 });
    stepping.start(20);
    Object.assign(film, { playing: false, ended: true });
    stepping.filmStopped();
    expect(seeks).toEqual([20, 20]);
    expect(film.playing).toBe(true);
  });
});
