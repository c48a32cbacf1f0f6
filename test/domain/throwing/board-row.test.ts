import { describe, expect, it } from "vitest";
import { type BoardQuestion, boardCells, boardDaysAround } from "@/server/domain/throwing/board-row";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { ask, entry, plan } from "./arm-question";

const TODAY = "2026-11-25";

/** A healthy 12-year-old's row, with what is given. */
function row(more: Partial<BoardQuestion>): BoardQuestion {
  return { ...ask(TODAY), outings: [], booked: [], pain: [], ...more };
}

/** The cell of one day. */
function cellOn(question: BoardQuestion, day: string) {
  const days = boardDaysAround(TODAY);
  return boardCells(question, days)[days.indexOf(day)];
}

describe("a row of the board", () => {
  it("spans two weeks to either side of today, a clock change among them or not", () => {
    for (const today of [TODAY, "2026-11-01", "2028-02-29"]) {
      const days = boardDaysAround(today);
      expect(days).toHaveLength(29);
      expect(days[14]).toBe(today);
      expect(new Set(days).size).toBe(29);
    }
  });

  it("says what was thrown, what is planned, and the rest that both ask for", () => {
    const question = row({
      entries: [entry(["2026-11-24", 51]), entry(["2026-11-22", 30, "long_toss"])],
      outings: [plan(["2026-12-05", 60])],
      booked: [plan(["2026-12-03", 20, "bullpen"])],
    });
    expect(cellOn(question, "2026-11-24")).toMatchObject({ thrown: 51 });
    // Long toss is shown on the log and counts toward nothing.
    expect(cellOn(question, "2026-11-22")).toMatchObject({ thrown: 0 });
    for (const day of ["2026-11-25", "2026-11-26", "2026-11-27"]) {
      expect(cellOn(question, day)).toMatchObject({ limit: "resting", thrown: 0 });
    }
    expect(cellOn(question, "2026-11-28")?.limit).toBe(85);
    expect(cellOn(question, "2026-12-03")).toMatchObject({ booked: 20, limit: 15 });
    expect(cellOn(question, "2026-12-05")).toMatchObject({ outing: 60 });
  });

  it("answers each day as the book is asked about that day", () => {
    const entries = [entry(["2026-11-14", 70]), entry(["2026-11-20", 22]), entry(["2026-11-21", 18])];
    const outings = [plan(["2026-11-30", 40]), plan(["2026-12-06", 85])];
    const question = row({ entries, outings });
    const cells = boardCells(question, boardDaysAround(TODAY));
    for (const [index, day] of boardDaysAround(TODAY).entries()) {
      const { status, pitches } = pitchesAllowed({ ...ask(day), entries, planned: outings, today: TODAY });
      expect(cells[index]?.limit, day).toBe(status === "resting" ? "resting" : pitches);
    }
  });

  it("has no cells for no days", () => {
    expect(boardCells(row({}), [])).toEqual([]);
  });
});
