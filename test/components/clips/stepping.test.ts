import { describe, expect, it } from "vitest";
import { quiet } from "../../helpers/counting-source";
import { COUNT, opened, steppingDesk } from "../../helpers/stepping-desk";

describe("stepping through a clip", () => {
  it("seeks in the film first, then holds pictures ready", async () => {
    const { stepping, seeks, place } = steppingDesk();
    stepping.ready();
    await quiet(6);
    expect(seeks).toEqual([0]);
    await quiet();
    expect(place()).toEqual({
      ...{ frame: 0, wanted: 0, isExact: true, shownBy: "film", source: "decoded", isLooping: false },
    });
  });

  it("shows a frame that is held at once, without a seek", async () => {
    const { stepping, seeks, source, place } = await opened();
    stepping.show(1);
    expect(place()).toMatchObject({ frame: 1, wanted: 1, isExact: true, shownBy: "canvas" });
    expect(source.painted).toEqual([1]);
    expect(seeks).toEqual([]);
  });

  it("seeks to a frame that is not held, and lets the window rest meanwhile", async () => {
    const { stepping, seeks, source, place } = await opened();
    const decodedBefore = source.decoded.length;
    stepping.show(80);
    expect(place()).toMatchObject({ frame: 0, wanted: 80 });
    await quiet(4);
    expect(source.decoded.length).toBe(decodedBefore);
    await quiet();
    expect(seeks).toEqual([80]);
    expect(place()).toMatchObject({ frame: 80, wanted: 80, shownBy: "film" });
    stepping.show(79);
    expect(place()).toMatchObject({ frame: 79, shownBy: "canvas" });
  });

  it("comes to rest on the latest of many frames asked for at once", async () => {
    const { stepping, seeks, place } = await opened({ hasWindow: false });
    for (let frame = 40; frame < 60; frame += 1) stepping.show(frame);
    await quiet();
    expect(place()).toMatchObject({ frame: 59, wanted: 59, source: "film" });
    expect(seeks.length).toBeLessThanOrEqual(2);
  });

  it("counts the next step from the frame asked for last, be it there or not", async () => {
    const { stepping } = await opened();
    stepping.show(70);
    expect(stepping.aim()).toBe(70);
  });

  it("stays within the clip", async () => {
    const { stepping, place } = await opened();
    stepping.show(-3);
    expect(place()?.wanted).toBe(0);
    stepping.show(500);
    expect(place()?.wanted).toBe(COUNT - 1);
  });

  it("says so when the film does not show the very frame", async () => {
    const { stepping, place } = await opened({ hasWindow: false, misses: [30] });
    stepping.show(30);
    await quiet();
    expect(place()).toMatchObject({ frame: 29, wanted: 30, isExact: false });
  });

  it("goes on with the film alone where pictures cannot be decoded, and asks once", async () => {
    const { stepping, place, windows } = await opened({ hasWindow: false });
    stepping.show(5);
    await quiet();
    expect(place()).toMatchObject({ frame: 5, shownBy: "film", source: "film" });
    expect(windows()).toBe(1);
  });

  it("goes back to the film when decoding breaks, with the picture as it is", async () => {
    const { stepping, source, place } = await opened();
    stepping.show(10);
    source.breaksAt = 60;
    stepping.show(55);
    await quiet();
    expect(place()).toMatchObject({ frame: 55, source: "film" });
    stepping.show(56);
    await quiet();
    expect(place()).toMatchObject({ frame: 56, isExact: true, shownBy: "film" });
    expect(source.open.size).toBe(0);
  });

  it("does what is to be done when a frame is shown, once", async () => {
    const { stepping } = await opened();
    let times = 0;
    stepping.show(3, () => {
      times += 1;
    });
    stepping.show(90, () => {
      times += 10;
    });
    await quiet();
    expect(times).toBe(11);
  });
});

describe("playing after steps", () => {
  it("begins on the frame on the picture, which stays until the film has come to it", async () => {
    const { stepping, seeks, place } = await opened();
    stepping.show(8);
    stepping.start();
    expect(seeks).toEqual([8]);
    expect(place()).toMatchObject({ frame: 8, shownBy: "canvas" });
    stepping.filmTold(8);
    stepping.filmTold(9);
    expect(place()).toMatchObject({ frame: 9, wanted: 9, shownBy: "film" });
  });

  it("goes back when it has come to the end of a loop, and plays on without one", async () => {
    const { stepping, seeks } = await opened();
    stepping.loopIn({ from: 20, to: 30 });
    stepping.start(20);
    for (const frame of [20, 29, 31]) stepping.filmTold(frame);
    expect(seeks).toEqual([20, 20]);
    stepping.loopIn({ from: 90, to: COUNT - 1 });
    stepping.filmTold(COUNT - 2);
    expect(seeks).toEqual([20, 20, 90]);
    stepping.loopIn(null);
    stepping.filmTold(COUNT - 2);
    expect(seeks).toEqual([20, 20, 90]);
  });

  it("decodes nothing while it plays, and again when it stands", async () => {
    const { stepping, source, place } = await opened();
    stepping.start();
    const before = source.decoded.length;
    stepping.filmTold(50);
    await quiet();
    expect(source.decoded.length).toBe(before);
    stepping.stop();
    await quiet();
    stepping.show(51);
    expect(place()).toMatchObject({ frame: 51, shownBy: "canvas" });
  });
});

describe("letting go", () => {
  it("closes every picture of a page that is hidden, and holds them again when it is seen", async () => {
    const { stepping, source, windows, place } = await opened();
    stepping.show(4);
    stepping.letGo();
    expect(source.open.size).toBe(0);
    expect(place()?.frame).toBe(4);
    stepping.takeUp();
    await quiet();
    expect(windows()).toBe(2);
    expect(source.open.size).toBe(20);
  });

  it("closes every picture at the end, one that opens too late as well, and tells no more", async () => {
    const { stepping, source, places } = steppingDesk();
    stepping.ready();
    await quiet(7);
    stepping.end();
    const told = places.length;
    await quiet();
    expect(source.open.size).toBe(0);
    expect(source.isClosed || source.decoded.length === 0).toBe(true);
    expect(places.length).toBe(told);
  });
});
