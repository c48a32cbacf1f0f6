import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayStep } from "@/components/evidence/day-step";
import { plotOf, type SeriesView } from "@/components/evidence/plot-days";
import { dayReadOut, seriesName, spanInWords } from "@/components/evidence/series-words";
import { frameAsked, roomAddress } from "@/components/reviews/room-address";
import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { addDays } from "@/server/domain/time/calendar-day";

const AXIS = { startDay: "2026-03-01", endDay: "2026-06-01" };

const day = (on: string, value: number): SeriesView["days"][number] => ({
  ...{ day: on, value, least: value, greatest: value, deliveries: 1, words: `${value}°`, place: null },
});

type Corrections = CheckpointEvidence["corrections"];
const correction = (changes: Partial<Corrections[number]> = {}): Corrections[number] => ({
  ...{ id: "cor", roundId: "rnd", cue: "Firm front leg", state: "held", cameBack: false },
  givenOn: "2026-03-03",
  spans: [
    { state: "given", fromDay: "2026-03-03", toDay: "2026-04-01" },
    { state: "showing", fromDay: "2026-04-01", toDay: "2026-05-20" },
    { state: "held", fromDay: "2026-05-20", toDay: null },
  ],
  ...changes,
});

describe("a series as it is drawn", () => {
  it("stands by days since the axis began, its correction shaded until it first held", () => {
    const days = [day("2026-03-02", 52), day("2026-05-31", 40)];
    const plot = plotOf(
      { kind: "front_knee_flexion", days, plusMinus: 4, published: [] },
      [correction()],
      AXIS,
    );
    expect(plot.days).toEqual([
      { offset: 1, value: 52, reach: 4 },
      { offset: 91, value: 40, reach: 4 },
    ]);
    expect(plot.spans).toEqual([{ id: "cor", place: 1, from: 2, to: 80 }]);
    expect(plot.least).toBeLessThan(36);
    expect(plot.greatest).toBeGreaterThan(56);
  });

  it("keeps what was published in sight, and a correction that is open without an end", () => {
    const published = [{ words: "", mean: 30, sd: 15 }];
    const open = correction({ spans: [{ state: "given", fromDay: "2026-03-03", toDay: null }] });
    const of = { kind: "front_knee_flexion", days: [day("2026-03-02", 40)], plusMinus: null } as const;
    const { least, greatest, bands, spans } = plotOf({ ...of, days: [...of.days], published }, [open], AXIS);
    expect(bands).toEqual([{ from: 15, to: 45 }]);
    expect(least).toBeLessThan(15);
    expect(greatest).toBeGreaterThan(45);
    expect(spans[0]?.to).toBeNull();
  });

  it("has height and nothing but numbers, whatever the days hold", () => {
    const anyDay = fc
      .tuple(fc.integer({ min: 0, max: 90 }), fc.oneof(fc.constant(40), fc.integer({ min: -180, max: 180 })))
      .map(([on, value]) => day(addDays(AXIS.startDay, on), value));
    fc.assert(
      fc.property(
        fc.array(anyDay, { maxLength: 12 }),
        fc.option(fc.integer({ min: 0, max: 30 })),
        fc.constantFrom("judgement" as const, "trunk_tilt_forward" as const),
        (days, plusMinus, kind) => {
          const plot = plotOf({ kind, days, plusMinus, published: [] }, [], AXIS);
          expect(plot.greatest).toBeGreaterThan(plot.least);
          expect(JSON.stringify(plot)).not.toMatch(/null|NaN/);
        },
      ),
    );
  });
});

describe("the words of a series", () => {
  it("name what was looked at and from where", () => {
    expect(seriesName({ kind: "judgement", view: null })).toBe("Judged, in person");
    expect(seriesName({ kind: "front_knee_flexion", view: "open_side" })).toBe(
      "Front-knee flexion, open side",
    );
  });

  it("read a day out, and say when its film is gone", () => {
    const place = { roundId: "rnd", clipId: "clp", frame: 3, isKept: false };
    expect(dayReadOut({ ...day("2026-03-02", 41), deliveries: 3, place })).toBe(
      "Mon 2 Mar 2026: 41°, the middle of 3 deliveries. Its film is past its day and gone.",
    );
  });

  it("tell a correction from given to held, come back and open", () => {
    expect(spanInWords(correction(), 1)).toBe(
      "1. “Firm front leg”: given Tue 3 Mar 2026, showing Wed 1 Apr 2026, held Wed 20 May 2026.",
    );
    const back = correction({
      cameBack: true,
      spans: [
        { state: "held", fromDay: "2026-04-01", toDay: "2026-05-01" },
        { state: "given", fromDay: "2026-05-01", toDay: null },
      ],
    });
    expect(spanInWords(back, 2)).toBe(
      "2. “Firm front leg”: given Tue 3 Mar 2026, held Wed 1 Apr 2026, given again Fri 1 May 2026, still open. It came back.",
    );
  });
});

describe("going from day to day", () => {
  it.each([
    ["ArrowRight", 0, 1],
    ["ArrowRight", 2, 2],
    ["ArrowLeft", 0, 0],
    ["Home", 2, 0],
    ["End", 0, 2],
    ["a", 1, null],
  ])("%s from %i leads to %o of three", (key, at, to) => {
    expect(dayStep(key, at, 3)).toBe(to);
  });

  it("leads nowhere where there is no day", () => {
    expect(dayStep("End", 0, 0)).toBeNull();
  });
});

describe("the address of a frame", () => {
  it("counts from 1 and is read back", () => {
    const address = roomAddress({ roundId: "rnd_1", clipId: "clp_1", frame: 108 });
    expect(address).toBe("/reviews/rnd_1?clip=clp_1&frame=109");
    expect(frameAsked({ clip: "clp_1", frame: "109" })).toEqual({ clipId: "clp_1", frame: 108 });
  });

  it.each(["0", "-4", "x", "1.5", undefined, ["3", "4"]])("takes the first frame for %o", (frame) => {
    expect(frameAsked({ clip: "clp_1", frame })).toEqual({ clipId: "clp_1", frame: 0 });
  });

  it.each([undefined, "", ["a", "b"]])("names no clip for %o", (clip) => {
    expect(frameAsked({ clip, frame: "3" })).toBeUndefined();
  });
});
