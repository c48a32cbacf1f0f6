import { describe, expect, it } from "vitest";
import { armMarks, armOnDay } from "@/server/domain/throwing/arm-marks";
import { pitchesAllowed } from "@/server/domain/throwing/pitches-allowed";
import { ask } from "./arm-question";

const marksFor = (...question: Parameters<typeof ask>) => armMarks(pitchesAllowed(ask(...question)), 0);

describe("the marks of an arm", () => {
  it("say the book's number for a rested arm, never as a permission", () => {
    expect(marksFor("2026-11-25")).toEqual([
      { kind: "allowed", count: 85, freeOn: null, words: "at most 85 by the book" },
    ]);
  });

  it("say until when an arm rests", () => {
    expect(marksFor("2026-11-26", { thrown: [["2026-11-25", 51]] })).toEqual([
      { kind: "resting", count: null, freeOn: "2026-11-29", words: "resting until Sun 29 Nov" },
    ]);
    expect(marksFor("2026-11-28", { thrown: [["2026-11-25", 51]] })[0]?.words).toBe("resting until tomorrow");
  });

  it("name the outing that a smaller number is kept for", () => {
    const marks = marksFor("2026-11-29", { planned: [["2026-12-01", 60]] });
    expect(marks.map(({ kind, words }) => [kind, words])).toEqual([
      ["allowed", "at most 35 by the book"],
      ["outing", "outing Tue 1 Dec"],
    ]);
  });

  it("put pain before everything", () => {
    const pain = {
      kind: "pain",
      firstFeltOn: "2026-11-20",
      lastFeltOn: "2026-11-20",
      reportIds: ["p"],
    } as const;
    const marks = marksFor("2026-11-25", {
      pain: { ...pain, reportIds: ["p"] },
      thrown: [["2026-11-24", 51]],
    });
    expect(marks).toEqual([{ kind: "pain", count: null, freeOn: null, words: "no throwing: pain reported" }]);
  });

  it("say since when nothing was reported", () => {
    const marks = marksFor("2026-11-25", { lastReportedOn: "2026-11-03" });
    expect(marks.at(-1)).toEqual({
      kind: "unreported",
      count: null,
      freeOn: null,
      words: "nothing reported since 3 Nov: ask",
    });
  });

  it("show what was thrown on the day beside what the book leaves", () => {
    const answer = pitchesAllowed(ask("2026-11-25", { thrown: [["2026-11-25", 35]] }));
    expect(armMarks(answer, 35).map(({ kind, count }) => [kind, count])).toEqual([
      ["allowed", 50],
      ["thrown", 35],
    ]);
  });

  it("count what was thrown on the day, not what is planned for it", () => {
    const thrown = [["2026-11-25", 35]] as [string, number][];
    const planned = [["2026-11-25", 20]] as [string, number][];
    const { answer, marks } = armOnDay(ask("2026-11-25", { thrown, planned }));
    expect(answer.pitches).toBe(30);
    expect(marks.map(({ kind, count }) => [kind, count])).toEqual([
      ["allowed", 30],
      ["thrown", 35],
    ]);
  });

  it("bear no number that an admin's override gave: the circle is the books' own", () => {
    const overrides = [{ id: "o", day: "2026-11-26", pitches: 60 }];
    const [mark] = marksFor("2026-11-26", { thrown: [["2026-11-25", 51]], overrides });
    expect(mark).toMatchObject({ count: null, words: "60 by an admin's override, not by the book" });
  });

  it("bear no number for an age without a published limit", () => {
    expect(marksFor("2026-11-25", { bornOn: "2000-01-01" })[0]).toMatchObject({
      kind: "allowed",
      count: null,
      words: "no published limit",
    });
  });
});
