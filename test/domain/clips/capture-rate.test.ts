import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  CONTACT_TO_RELEASE_MS,
  captureChoices,
  capturedFpsSaid,
  contactToReleaseMs,
  likelyCapturedFps,
  rateInWords,
} from "@/server/domain/clips/capture-rate";

const evenly = (fps: number, frames: number) => Array.from({ length: frames }, (_, at) => (at * 1000) / fps);

describe("the captured rate that follows from what the sender says", () => {
  it.each([
    ["normal", evenly(60, 30), 60],
    ["normal", evenly(240, 30), 240],
    ["slow_120", evenly(30, 30), 120],
    ["slow_240", evenly(30, 30), 240],
    ["slow_240", evenly(240, 30), 240],
    ["slow_120", evenly(240, 30), null],
    ["unknown", evenly(30, 30), null],
    ["normal", [0], null],
  ] as const)("is told for %s", (said, times, fps) => {
    const told = capturedFpsSaid(said, times);
    if (fps === null) expect(told).toBeNull();
    else expect(told).toBeCloseTo(fps, 6);
  });
});

describe("the rates a clip may have been recorded at", () => {
  it.each([
    [evenly(30, 60), [30, 50, 60, 100, 120, 200, 240, 480, 960]],
    [evenly(30_000 / 1001, 60), [30_000 / 1001, 50, 60, 100, 120, 200, 240, 480, 960]],
    [evenly(240, 60), [240, 480, 960]],
    [[], []],
  ])("begin with the file's own", (times, rates) => {
    const choices = captureChoices(times);
    expect(choices).toHaveLength(rates.length);
    for (const [at, rate] of rates.entries()) expect(choices[at]).toBeCloseTo(rate, 6);
  });
});

describe("the check against contact to release", () => {
  it("holds the published time", () => {
    const published = JSON.parse(readFileSync("test/reference/kinematics.json", "utf8"));
    expect(CONTACT_TO_RELEASE_MS).toBe(published.seroyer_2010.contact_to_release_s * 1000);
  });

  it("gives the time that the frames lasted at a captured rate", () => {
    const times = evenly(30, 100);
    expect(contactToReleaseMs(times, { contact: 10, release: 46 }, 240)).toBeCloseTo(150, 6);
    expect(contactToReleaseMs(times, { contact: 10, release: 46 }, 30)).toBeCloseTo(1200, 6);
  });

  it.each([
    ["no mark", {}],
    ["release alone", { release: 40 }],
    ["release before contact", { contact: 40, release: 10 }],
    ["both on one frame", { contact: 40, release: 40 }],
    ["a frame outside the table", { contact: 40, release: 400 }],
  ])("says nothing with %s", (_, marks: { contact?: number; release?: number }) => {
    const { contact, release } = marks;
    expect(contactToReleaseMs(evenly(30, 100), { contact, release }, 240)).toBeNull();
    expect(likelyCapturedFps(evenly(30, 100), { contact, release })).toBeNull();
  });

  it.each([
    [30, 240, 35],
    [30, 120, 17],
    [30, 30, 4],
    [60, 240, 36],
    [25, 100, 15],
    [60, 60, 9],
  ])("finds for a file of %i a second that %i were recorded", (fps, capturedFps, frames) => {
    const marks = { contact: 5, release: 5 + frames };
    expect(likelyCapturedFps(evenly(fps, 100), marks)).toBeCloseTo(capturedFps, 6);
  });
});

it.each([
  [240, "240"],
  [30_000 / 1001, "29.97"],
  [59.9999999, "60"],
])("writes the rate %f as %s", (fps, words) => {
  expect(rateInWords(fps)).toBe(words);
});
