import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { askedSpan } from "@/components/season-reports/asked-span";
import { SeasonReport } from "@/components/season-reports/report";
import type { Report } from "@/components/season-reports/report-answer";

const EMPTY: Report = {
  ...{ academyName: "North Academy", fromOn: "2026-01-01", toOn: "2026-12-31", asOf: "2026-11-25" },
  ...{ workedOn: [], focus: null },
  changes: {
    lookedAt: 0,
    tooFew: 0,
    words: ["Nothing was looked at often enough to compare."],
    told: [],
    same: [],
  },
  throwing: { weeks: [], months: [], words: ["Nothing was logged in this time."] },
  sessions: { booked: 0, came: 0, missed: 0, notLogged: 0, byKind: [] },
};

const drawn = (report: Partial<Report>) =>
  renderToStaticMarkup(<SeasonReport report={{ ...EMPTY, ...report }} athleteName="Kit M." />);

describe("a report as it is drawn", () => {
  it("says of everything that there is nothing, and draws no bar", () => {
    const markup = drawn({});
    for (const words of [
      "No correction was worked on in this time.",
      "A coach has not written it yet.",
      "Nothing was looked at often enough to compare.",
      "Nothing was logged in this time.",
      "No session was booked in this time.",
    ]) {
      expect(markup).toContain(words);
    }
    expect(markup).not.toMatch(/<svg|NaN|undefined/);
  });

  it("bears on its foot the academy, the athlete as far as the name may be told, the season and the day", () => {
    expect(drawn({})).toContain("North Academy · Kit M. · 2026 · as of Wed 25 Nov 2026");
  });

  it("tells a change by the fixed words, and on paper of five, with how many more there are", () => {
    const told = Array.from({ length: 7 }, (_, at) => ({
      ...{ id: `${at}`, checkpointName: `Checkpoint ${at}`, seen: "Judged in person, since Mon 1 Jun 2026" },
      words: ["Improved beyond measurement error.", "Median 0 of 3 days before."],
    }));
    const markup = drawn({ changes: { ...EMPTY.changes, lookedAt: 7, told } });
    expect(markup.match(/<li data-print="no">/g)).toHaveLength(2);
    expect(markup).toContain("2 more changed; they are on the screen.");
    expect(markup).toContain("7 checkpoints were compared; 7 changed beyond measurement error.");
    expect(markup).toContain("Judged in person, since Mon 1 Jun 2026. Median 0 of 3 days before.");
  });

  it("marks what came back and has not held since, and not what holds again", () => {
    const row: Report["workedOn"][number] = {
      ...{ id: "c", checkpointName: "Stride", phase: "stride", cue: "", givenOn: "2026-03-10" },
      ...{ state: "given", heldOn: "2026-04-01", cameBackOn: "2026-05-01", practiceDays: 0 },
    };
    expect(drawn({ workedOn: [row] })).toContain("given, came back");
    const again = { ...row, state: "held" as const, heldOn: "2026-06-01" };
    expect(drawn({ workedOn: [again] })).not.toContain(", came back</");
  });

  it("draws a bar a week that was thrown in, with its figures by month beside it", () => {
    const counts = { games: 30, bullpens: 10, lessons: 0, other: 0 };
    const none = { games: 0, bullpens: 0, lessons: 0, other: 0 };
    const markup = drawn({
      throwing: {
        weeks: [
          { weekOf: "2026-03-02", counts },
          { weekOf: "2026-03-09", counts: none },
        ],
        months: [{ month: "2026-03", throws: 40, outings: 1, outingPitches: 30 }],
        words: ["40 throws."],
      },
    });
    expect(markup.match(/<rect/g)).toHaveLength(2);
    expect(markup).toContain("the tallest bar 40");
    expect(markup).toMatch(/Throws<\/th><td>40<\/td>/);
  });
});

describe("the season that an address asks for", () => {
  it.each([
    [
      { from: "2026-01-01", to: "2026-06-30" },
      { fromOn: "2026-01-01", toOn: "2026-06-30" },
    ],
    [{}, null],
    [{ from: "2026-01-01" }, null],
    [{ from: "2026-02-30", to: "2026-06-30" }, null],
    [{ from: ["2026-01-01", "2026-01-02"], to: "2026-06-30" }, null],
  ])("%o is %o", (asked, span) => {
    expect(askedSpan(asked)).toEqual(span);
  });
});
