import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { knownAt } from "@/server/domain/throwing/known-at";
import { painStop } from "@/server/domain/throwing/pain";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { ask, entry, plan } from "./arm-question";

const RECORD = {
  entries: [
    entry(["2026-11-24", 20], { id: "said", reportedAtMs: 100 }),
    entry(["2026-11-24", 66], { id: "corrected", replacesId: "said", reportedAtMs: 200 }),
    entry(["2026-11-23", 40], { id: "late", reportedAtMs: 300 }),
  ],
  planned: [
    { ...plan(["2026-11-27", 40]), addedAtMs: 150, cancelledAtMs: 250 },
    { ...plan(["2026-11-30", 30]), addedAtMs: 250, cancelledAtMs: null },
  ],
  reports: [{ id: "p", kind: "pain" as const, feltOn: "2026-11-24", reportedAtMs: 210 }],
  clearances: [{ clearedAtMs: 220 }],
};

const saidAt = (atMs: number) => {
  const { entries, planned, ...pain } = knownAt(RECORD, atMs);
  return pitchesAllowed({ ...ask("2026-11-25", { entries, pain: painStop(pain) }), planned });
};

describe("what was said under what was then known", () => {
  it.each([
    ["before anything was said", 99, { pitches: 85 }],
    ["with the first word", 100, { pitches: 85 }],
    ["with an outing added", 150, { pitches: 35 }],
    ["with the correction", 200, { status: "resting", firstFreeDay: "2026-11-30" }],
    ["with pain", 210, { status: "pain" }],
    ["after its clearance", 220, { status: "resting", firstFreeDay: "2026-11-30" }],
    [
      "with the late entry, one outing gone and another added",
      300,
      { status: "resting", firstFreeDay: "2026-11-29" },
    ],
  ])("%s", (_name, atMs, answer) => {
    expect(saidAt(atMs)).toMatchObject(answer);
  });

  it("never loses a row that was known, but a plan that was cancelled", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (a, b) => {
        const earlier = knownAt(RECORD, Math.min(a, b));
        const later = knownAt(RECORD, Math.max(a, b));
        for (const rows of ["entries", "reports", "clearances"] as const) {
          expect(later[rows]).toEqual(expect.arrayContaining([...earlier[rows]]));
        }
      }),
    );
  });
});
