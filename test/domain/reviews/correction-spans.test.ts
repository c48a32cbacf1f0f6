import { describe, expect, it } from "vitest";
import { correctionSpans } from "@/server/domain/reviews/correction-spans";
import { type CorrectionEvent, standingOf } from "@/server/domain/reviews/correction-state";
import { instantOf } from "@/server/domain/time/calendar-day";

const ZONE = "America/New_York";
const event = (kind: CorrectionEvent["kind"], day: string, minute = 600): CorrectionEvent => ({
  kind,
  atMs: instantOf(day, minute, ZONE),
  reason: "",
});
const spansOf = (...events: CorrectionEvent[]) => correctionSpans(standingOf(events).history, ZONE);

describe("the spans of a correction", () => {
  it("run from given to held without a gap", () => {
    const spans = spansOf(
      event("given", "2026-11-01"),
      event("yes", "2026-11-10"),
      event("yes", "2026-11-20"),
    );
    expect(spans).toEqual([
      { state: "given", fromDay: "2026-11-01", toDay: "2026-11-10" },
      { state: "showing", fromDay: "2026-11-10", toDay: "2026-11-20" },
      { state: "held", fromDay: "2026-11-20", toDay: null },
    ]);
  });

  it("leave out what was passed through within a day, but never how it stands now", () => {
    const spans = spansOf(event("given", "2026-11-01"), event("confirmed", "2026-11-01", 900));
    expect(spans).toEqual([{ state: "held", fromDay: "2026-11-01", toDay: null }]);
  });

  it("use the day at the site, not the day in UTC", () => {
    const spans = spansOf(event("given", "2026-11-01", 1380));
    expect(spans[0]?.fromDay).toBe("2026-11-01");
  });

  it("show one that came back as given again", () => {
    const spans = spansOf(
      event("given", "2026-11-01"),
      event("confirmed", "2026-11-05"),
      event("not_yet", "2026-11-12"),
    );
    expect(spans.map(({ state }) => state)).toEqual(["given", "held", "given"]);
  });
});
