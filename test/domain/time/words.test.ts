import { describe, expect, it } from "vitest";
import {
  dayInWords,
  momentInWords,
  monthInWords,
  spanInWords,
  timeInWords,
} from "@/server/domain/time/words";

const MINUTE_MS = 60_000;

describe("days and moments in words", () => {
  it.each([
    ["2026-11-28", {}, "Sat 28 Nov"],
    ["2026-11-28", { withYear: true }, "Sat 28 Nov 2026"],
    ["2026-12-01", { long: true }, "Tuesday 1 December"],
    ["2028-02-29", { long: true, withYear: true }, "Tuesday 29 February 2028"],
  ])("writes %s %o as %s", (day, options, words) => {
    expect(dayInWords(day, options)).toBe(words);
  });

  it("writes a month with its year", () => {
    expect(monthInWords("2026-11")).toBe("November 2026");
    expect(monthInWords("2026-01")).toBe("January 2026");
  });

  it("tells the time by the wall clock of the place, on its own day", () => {
    const instantMs = Date.UTC(2026, 11, 1, 5, 30);
    expect(momentInWords(instantMs, "America/New_York")).toBe("Tue 1 Dec 00:30");
    expect(momentInWords(instantMs, "America/Los_Angeles")).toBe("Mon 30 Nov 21:30");
    expect(momentInWords(instantMs, "America/New_York", { withYear: true })).toBe("Tue 1 Dec 2026 00:30");
    expect(timeInWords(instantMs, "America/Phoenix")).toBe("22:30");
  });

  it("gives both passes of the hour that comes twice the same time", () => {
    expect(timeInWords(Date.UTC(2026, 10, 1, 5, 30), "America/New_York")).toBe("01:30");
    expect(timeInWords(Date.UTC(2026, 10, 1, 6, 30), "America/New_York")).toBe("01:30");
  });
});

describe("a span in words", () => {
  it.each([
    [0, "under a minute"],
    [MINUTE_MS - 1, "under a minute"],
    [MINUTE_MS, "1 min"],
    [59 * MINUTE_MS + 59_999, "59 min"],
    [60 * MINUTE_MS, "1 h"],
    [200 * MINUTE_MS, "3 h 20 min"],
    [1439 * MINUTE_MS, "23 h 59 min"],
    [1440 * MINUTE_MS, "1 day"],
    [(1440 + 60) * MINUTE_MS, "1 day 1 h"],
    [(2880 + 180 + 59) * MINUTE_MS, "2 days 3 h"],
  ])("of %i ms is %s", (spanMs, words) => {
    expect(spanInWords(spanMs)).toBe(words);
  });

  it("leaves the sign to whoever words it", () => {
    expect(spanInWords(-200 * MINUTE_MS)).toBe("3 h 20 min");
  });
});
