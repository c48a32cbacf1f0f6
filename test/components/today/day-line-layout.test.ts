import { describe, expect, it } from "vitest";
import { coachLines, hoursOver, hourTicks, shareOf } from "@/components/today/day-line-layout";
import { instantOf } from "@/server/domain/time/calendar-day";

const ZONE = "America/New_York";
const at = (minute: number, day = "2026-11-25") => instantOf(day, minute, ZONE);
const session = (id: string, coach: string, startMin: number, endMin: number) => ({
  id,
  coachPersonId: coach,
  coachName: coach,
  startsAtMs: at(startMin),
  endsAtMs: at(endMin),
});

describe("the hours of a day line", () => {
  it("cover opening hours and every session, to full hours", () => {
    const span = hoursOver({ startMs: at(840), endMs: at(1260) }, [session("a", "c", 810, 855)]);
    expect(span).toEqual({ startMs: at(780), endMs: at(1260) });
  });

  it("are none for a closed day without sessions", () => {
    expect(hoursOver(null, [])).toBeNull();
  });

  it("carry the wall clock's numbers, also where the zone is half an hour off", () => {
    expect(hourTicks({ startMs: at(840), endMs: at(960) }, ZONE).map((tick) => tick.hour)).toEqual([
      14, 15, 16,
    ]);
    const startMs = instantOf("2026-11-25", 870, "America/St_Johns");
    expect(hourTicks({ startMs, endMs: startMs + 3_600_000 }, "America/St_Johns")).toEqual([
      { atMs: startMs + 1_800_000, hour: 15 },
    ]);
  });

  it("skip the hour that a clock change takes away", () => {
    const span = { startMs: at(60, "2026-03-08"), endMs: at(240, "2026-03-08") };
    expect(hourTicks(span, ZONE).map((tick) => tick.hour)).toEqual([1, 3, 4]);
  });
});

describe("the lines of a day", () => {
  const span = { startMs: at(840), endMs: at(1080) };

  it("put one's own first, then the others by name", () => {
    const lines = coachLines([session("a", "ann", 840, 900), session("b", "me", 900, 960)], span, "me");
    expect(lines.map((line) => line.coachName)).toEqual(["me", "ann"]);
  });

  it("place a session by its share of the span", () => {
    const [line] = coachLines([session("a", "ann", 900, 960)], span, "me");
    expect(line?.sessions).toMatchObject([{ from: 0.25, width: 0.25 }]);
  });

  it("keep what is outside at the nearer end", () => {
    expect(shareOf(span, at(600))).toBe(0);
    expect(shareOf(span, at(1200))).toBe(1);
  });
});
