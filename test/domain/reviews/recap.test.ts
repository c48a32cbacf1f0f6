import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DELIVERY_PHASES, phaseOrder } from "@/server/domain/mechanics/delivery";
import { countInWords, type RecapCorrection, recapInWords, recapOf } from "@/server/domain/reviews/recap";

const correction = (changes: Partial<RecapCorrection>): RecapCorrection => ({
  id: "c",
  phase: "stride",
  frame: 40,
  checkpointName: "Hips lead",
  cue: "Hip first",
  drill: "hip bumps",
  ...changes,
});
const anyCorrections = fc.array(
  fc.record({
    phase: fc.constantFrom(...DELIVERY_PHASES),
    frame: fc.integer({ min: 0, max: 20 }),
    checkpointName: fc.string({ minLength: 1 }),
    cue: fc.string({ unit: "binary" }),
    drill: fc.oneof(fc.constant(""), fc.constant("2. not a number\n3. nor this"), fc.string()),
  }),
  { maxLength: 10 },
);

describe("the recap of a review", () => {
  it("tells the corrections in the delivery's order, numbered, with the keeps before them", () => {
    const recap = recapOf({
      keeps: [
        { id: "k2", phase: "follow_through", frame: null, text: "Held the finish" },
        { id: "k1", phase: "wind_up", frame: 3, text: "Quiet start" },
      ],
      corrections: [
        correction({
          id: "c3",
          phase: "acceleration",
          frame: 90,
          checkpointName: "Front knee firms",
          cue: "Post up!",
          drill: "",
        }),
        correction({ id: "c2", frame: 60, checkpointName: "Stride length", cue: "Ride the back leg" }),
        correction({ id: "c1", frame: 44 }),
      ],
    });
    expect(recap.corrections.map(({ number, id }) => [number, id])).toEqual([
      [1, "c1"],
      [2, "c2"],
      [3, "c3"],
    ]);
    expect(recapInWords(recap)).toBe(
      [
        "Keep:",
        "- Quiet start (wind-up)",
        "- Held the finish (follow-through)",
        "Work on 3 corrections:",
        "1. Hips lead (stride): Hip first. Drill: hip bumps.",
        "2. Stride length (stride): Ride the back leg. Drill: hip bumps.",
        "3. Front knee firms (acceleration): Post up!",
      ].join("\n"),
    );
  });

  it("of one correction reads as its own example", () => {
    expect(recapInWords(recapOf({ keeps: [], corrections: [correction({})] }))).toBe(
      "Work on 1 correction:\n1. Hips lead (stride): Hip first. Drill: hip bumps.",
    );
  });

  it("says so when there is nothing to correct", () => {
    const recap = recapOf({
      keeps: [{ id: "k", phase: "stride", frame: null, text: "All of it" }],
      corrections: [],
    });
    expect(recap.count).toBe(0);
    expect(recapInWords(recap)).toBe("Keep:\n- All of it (stride)\nNo corrections this time.");
    expect(countInWords(0)).toBe("no corrections");
  });

  it("always has as many numbered lines as corrections were marked, numbered from 1 without a gap", () => {
    fc.assert(
      fc.property(anyCorrections, (rows) => {
        const marked = rows.map((row, index) => ({ ...row, id: String(index) }));
        const recap = recapOf({
          keeps: [{ id: "k", phase: "stride", frame: null, text: "1. a\n2. b" }],
          corrections: marked,
        });
        expect(recap.count).toBe(marked.length);
        expect(recap.corrections.map(({ number }) => number)).toEqual(marked.map((_, index) => index + 1));
        const numbered = recapInWords(recap)
          .split("\n")
          .flatMap((line) => /^(\d+)\. /u.exec(line)?.[1] ?? []);
        expect(numbered).toEqual(marked.map((_, index) => String(index + 1)));
      }),
    );
  });

  it("holds exactly what was marked, by phase, then frame, then the order of writing", () => {
    fc.assert(
      fc.property(anyCorrections, (rows) => {
        const marked = rows.map((row, index) => ({ ...row, id: String(index) }));
        const { corrections } = recapOf({ keeps: [], corrections: marked });
        expect(corrections.map(({ id }) => id).sort()).toEqual(marked.map(({ id }) => id).sort());
        const places = corrections.map(({ phase, frame, id }) => [phaseOrder(phase), frame, Number(id)]);
        for (const [index, place] of places.slice(1).entries()) {
          const differing = place.findIndex((part, at) => part !== places[index]?.[at]);
          expect(place[differing]).toBeGreaterThan(places[index]?.[differing] ?? Number.POSITIVE_INFINITY);
        }
      }),
    );
  });
});
