import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Observation,
  observedDays,
  repeatGroups,
  seriesOf,
} from "@/server/domain/mechanics/observation";
import { observation } from "./observations";

describe("a series", () => {
  it("holds one kind from one view: a judgement and a measure never mix, nor do two views", () => {
    const series = seriesOf([
      observation({ value: 40 }),
      observation({ value: 2, kind: "judgement" }),
      observation({ value: 55, view: "closed_side" }),
      observation({ value: 1, kind: "judgement", view: null, clipId: null, frame: null }),
      observation({ value: 44, pitchType: "change-up", day: "2026-03-09" }),
      observation({ value: 9, checkpointId: "head-steady" }),
    ]);
    expect(series.map(({ kind, view, days }) => [kind, view, days.length])).toEqual([
      ["front_knee_flexion", "open_side", 2],
      ["judgement", "open_side", 1],
      ["front_knee_flexion", "closed_side", 1],
      ["judgement", null, 1],
      ["front_knee_flexion", "open_side", 1],
    ]);
  });

  it("counts what was looked for and could not be seen, and gives it no value", () => {
    const [series] = seriesOf([
      observation({ value: null }),
      observation({ value: 3 }),
      observation({ value: null }),
    ]);
    expect(series).toMatchObject({ unseen: 2, days: [{ value: 3, deliveries: 1 }] });
    expect(seriesOf([observation({ value: null })])).toMatchObject([
      { unseen: 1, days: [], observations: [] },
    ]);
    expect(seriesOf([])).toEqual([]);
  });

  it("is in order of days, whatever order the looks came in", () => {
    const days = ["2026-03-09", "2026-01-05", "2026-02-01"];
    const [series] = seriesOf(days.map((day) => observation({ day })));
    expect(series?.days.map(({ day }) => day)).toEqual([...days].sort());
    expect(series?.observations.map(({ day }) => day)).toEqual([...days].sort());
  });
});

describe("a day", () => {
  it("counts once: a frame looked at again is one value, then the median of the deliveries", () => {
    const days = observedDays([
      observation({ id: "one", value: 40, clipId: "a" }),
      observation({ value: 42, clipId: "a", repeatOfId: "one" }),
      observation({ value: 47, clipId: "b" }),
    ]);
    expect(days).toEqual([{ day: "2026-03-02", value: 44, deliveries: 2, least: 40, greatest: 47 }]);
  });

  it("is that of the first look: a frame measured again weeks later adds no day", () => {
    const days = observedDays([
      observation({ value: 40, clipId: "a", day: "2026-03-30" }),
      observation({ value: 44, clipId: "a", day: "2026-03-02" }),
    ]);
    expect(days).toEqual([{ day: "2026-03-02", value: 42, deliveries: 1, least: 40, greatest: 44 }]);
  });

  it("seen in person counts each look as a delivery, but for one that repeats another", () => {
    const inPerson = { clipId: null, frame: null, view: null, kind: "judgement" } as const;
    const looks = [
      observation({ ...inPerson, id: "x", value: 1 }),
      observation({ ...inPerson, id: "y", value: 2 }),
      observation({ ...inPerson, id: "z", value: 3, repeatOfId: "x" }),
    ];
    expect(observedDays(looks)).toMatchObject([{ value: 2, deliveries: 2, least: 1, greatest: 3 }]);
  });

  it("keeps both ends of coaches who contradict each other", () => {
    const days = observedDays([0, 3].map((value) => observation({ value, kind: "judgement", clipId: "a" })));
    expect(days).toMatchObject([{ value: 1.5, least: 0, greatest: 3 }]);
  });
});

describe("repeats", () => {
  it("are one frame looked at again, and deliveries of one day by their first look", () => {
    const groups = repeatGroups([
      observation({ value: 40, clipId: "a" }),
      observation({ value: 42, clipId: "a" }),
      observation({ value: 47, clipId: "b" }),
      observation({ value: 50, clipId: "c", day: "2026-03-09" }),
      observation({ value: null, clipId: "d", day: "2026-03-09" }),
    ]);
    expect(groups).toEqual({ sameFrame: [[40, 42]], sameDay: [[40, 47]] });
    expect(repeatGroups([])).toEqual({ sameFrame: [], sameDay: [] });
  });
});

const drawn: fc.Arbitrary<Observation[]> = fc.array(
  fc
    .record({
      value: fc.option(fc.integer({ min: -90, max: 90 })),
      clipId: fc.constantFrom("a", "b", "c", "d", null),
      day: fc.constantFrom("2026-03-02", "2026-03-09", "2026-03-16"),
      view: fc.constantFrom("open_side" as const, "closed_side" as const),
    })
    .map(observation),
  { maxLength: 20 },
);

describe("whatever was seen", () => {
  it("each observation is in one series, with a value or as unseen", () => {
    fc.assert(
      fc.property(drawn, (observations) => {
        const counted = seriesOf(observations).map((each) => each.observations.length + each.unseen);
        expect(counted.reduce((sum, count) => sum + count, 0)).toBe(observations.length);
      }),
    );
  });

  it("a day lies between its least and its greatest, comes once, and does not depend on the order", () => {
    fc.assert(
      fc.property(drawn, (observations) => {
        const days = observedDays(observations);
        expect(days.every(({ value, least, greatest }) => least <= value && value <= greatest)).toBe(true);
        expect(new Set(days.map(({ day }) => day)).size).toBe(days.length);
        expect(observedDays([...observations].reverse())).toEqual(days);
      }),
    );
  });

  it("looking at a frame once more with the same value changes no day", () => {
    fc.assert(
      fc.property(drawn, (observations) => {
        const first = observations.filter(({ clipId }) => clipId !== null);
        const once = first.filter(
          (each, at) => first.findIndex((other) => other.clipId === each.clipId) === at,
        );
        const again = once.map((each) => ({ ...each, id: `${each.id} again`, repeatOfId: each.id }));
        expect(observedDays([...once, ...again])).toEqual(observedDays(once));
      }),
    );
  });
});
