import { describe, expect, it } from "vitest";
import { type PainSpan, painOnDay, painSpans } from "@/server/domain/throwing/pain-span";
import { dayOf } from "@/server/domain/time/calendar-day";

const span = (id: string, feltOn: string, clearedOn: string | null, others: Partial<PainSpan> = {}) => ({
  id,
  kind: "pain" as const,
  feltOn,
  clearedOn,
  ...others,
});

describe("the pain of a day", () => {
  const cleared = [span("a", "2026-11-14", "2026-11-17")];

  it.each([
    ["2026-11-13", false],
    ["2026-11-14", true],
    ["2026-11-16", true],
    ["2026-11-17", false],
  ])("cleared on the 17th, on %s stops the arm: %s", (day, isStopped) => {
    expect(painOnDay(cleared, day) !== null).toBe(isStopped);
  });

  it("stands on every later day until it is cleared", () => {
    expect(painOnDay([span("a", "2026-11-14", null)], "2027-01-01")).toEqual({
      stop: { kind: "pain", firstFeltOn: "2026-11-14", lastFeltOn: "2026-11-14", reportIds: ["a"] },
      clearedOn: null,
    });
  });

  it("names every report that stands on the day, pain before fatigue, and the last clearance", () => {
    const spans = [
      span("b", "2026-11-15", "2026-11-19", { kind: "unusual_fatigue" }),
      span("a", "2026-11-14", "2026-11-17"),
      span("c", "2026-11-20", null),
    ];
    expect(painOnDay(spans, "2026-11-16")).toEqual({
      stop: { kind: "pain", firstFeltOn: "2026-11-14", lastFeltOn: "2026-11-15", reportIds: ["a", "b"] },
      clearedOn: "2026-11-19",
    });
    expect(painOnDay(spans, "2026-11-18")?.stop.kind).toBe("unusual_fatigue");
  });

  it("cleared on the day it was felt stops no day", () => {
    expect(painOnDay([span("a", "2026-11-14", "2026-11-14")], "2026-11-14")).toBeNull();
  });
});

describe("the days of the reports", () => {
  const at = (day: number, hour: number) => Date.UTC(2026, 10, day, hour);
  const dayAt = (instantMs: number) => dayOf(instantMs, "America/New_York");
  const report = (id: string, feltOn: string, reportedAtMs: number) => ({
    id,
    kind: "pain" as const,
    feltOn,
    reportedAtMs,
  });

  it("end on the day of the first later clearance at the home site", () => {
    const reports = [report("a", "2026-11-14", at(14, 20))];
    const clearances = [{ clearedAtMs: at(20, 12) }, { clearedAtMs: at(18, 3) }, { clearedAtMs: at(13, 12) }];
    expect(painSpans({ reports, clearances }, dayAt)).toEqual([
      { id: "a", kind: "pain", feltOn: "2026-11-14", clearedOn: "2026-11-17" },
    ]);
  });

  it("do not end by a clearance made before the report or at its instant", () => {
    const reports = [report("a", "2026-11-10", at(14, 20))];
    const clearances = [{ clearedAtMs: at(14, 20) }, { clearedAtMs: at(12, 20) }];
    expect(painSpans({ reports, clearances }, dayAt)[0]?.clearedOn).toBeNull();
  });
});
