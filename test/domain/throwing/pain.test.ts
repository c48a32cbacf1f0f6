import { describe, expect, it } from "vitest";
import { RELATIONS } from "@/server/domain/access/relation";
import {
  clearanceRefusals,
  EXAMINED_BY_MAX_LENGTH,
  mayClear,
  PAIN_KINDS,
  type PainReport,
  painStop,
} from "@/server/domain/throwing/pain";
import { clearanceRefusalInWords } from "@/server/domain/throwing/refusal-in-words";

const report = (id: string, feltOn: string, reportedAtMs: number, kind: PainReport["kind"] = "pain") => ({
  id,
  kind,
  feltOn,
  reportedAtMs,
});

describe("a pain stop", () => {
  const early = report("early", "2026-11-20", 100);
  const late = report("late", "2026-11-23", 300, "unusual_fatigue");

  it.each([
    ["nothing reported", [], [], null],
    ["one report", [early], [], ["early"]],
    ["two reports", [late, early], [], ["early", "late"]],
    ["a report cleared after it", [early], [101], null],
    ["a clearance at the same instant", [early], [100], ["early"]],
    ["a clearance before any report", [early], [99], ["early"]],
    ["pain again after a clearance", [early, late], [200], ["late"]],
    ["both cleared, the second time for good", [early, late], [200, 301], null],
    ["clearances in any order", [early, late], [301, 200], null],
  ])("stands or not: %s", (_name, reports, clearedAt, ids) => {
    const stop = painStop({ reports, clearances: clearedAt.map((clearedAtMs) => ({ clearedAtMs })) });
    expect(stop?.reportIds ?? null).toEqual(ids);
  });

  it("names the first and the last day it was felt, and pain before fatigue", () => {
    expect(painStop({ reports: [late, early], clearances: [] })).toEqual({
      kind: "pain",
      firstFeltOn: "2026-11-20",
      lastFeltOn: "2026-11-23",
      reportIds: ["early", "late"],
    });
    expect(painStop({ reports: [late], clearances: [] })?.kind).toBe("unusual_fatigue");
    expect(PAIN_KINDS).toEqual(["pain", "unusual_fatigue"]);
  });

  it("stops the arm again when pain of before the clearance is reported after it", () => {
    const forgotten = report("forgotten", "2026-11-01", 500);
    expect(painStop({ reports: [early, forgotten], clearances: [{ clearedAtMs: 400 }] })?.reportIds).toEqual([
      "forgotten",
    ]);
  });
});

describe("clearing", () => {
  it("is the guardian's for a minor and the athlete's own from 18; never a coach's or an admin's", () => {
    const clearingAt = (ageYears: number) => RELATIONS.filter((relation) => mayClear({ relation, ageYears }));
    expect(clearingAt(12)).toEqual(["guardian"]);
    expect(clearingAt(17)).toEqual(["guardian"]);
    expect(clearingAt(18)).toEqual(["self_of_age"]);
    expect(clearingAt(40)).toEqual(["self_of_age"]);
  });

  const stop = painStop({
    reports: [report("a", "2026-11-20", 1), report("b", "2026-11-22", 2)],
    clearances: [],
  });
  const TODAY = "2026-11-25";

  it.each([
    ["the day it was last felt", "2026-11-22", "Dr Ames", []],
    ["today", TODAY, "Dr Ames", []],
    ["tomorrow", "2026-11-26", "Dr Ames", ["The day without symptoms cannot be after today."]],
    [
      "the day before it was last felt",
      "2026-11-21",
      "Dr Ames",
      ["It was still felt on Sun 22 Nov: the day without symptoms cannot be before that."],
    ],
    ["no day", "2026-02-30", "Dr Ames", ["That is not a day of the calendar."]],
    ["nobody", TODAY, "", ["Say who examined the arm."]],
    ["blanks", TODAY, " \n\t", ["Say who examined the arm."]],
    ["as long as may be", TODAY, "x".repeat(EXAMINED_BY_MAX_LENGTH), []],
    [
      "too long",
      TODAY,
      "x".repeat(EXAMINED_BY_MAX_LENGTH + 1),
      ["Who examined the arm fits in 200 characters."],
    ],
    ["nothing at all", "", "", ["That is not a day of the calendar.", "Say who examined the arm."]],
  ])("asks for a day and an examiner that hold: %s", (_name, symptomFreeSince, examinedBy, words) => {
    if (!stop) throw new Error("two reports stand");
    const refusals = clearanceRefusals({ symptomFreeSince, examinedBy }, stop, TODAY);
    expect(refusals.map(clearanceRefusalInWords)).toEqual(words);
  });
});
