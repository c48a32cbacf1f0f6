import { describe, expect, it } from "vitest";
import { actInWords, factsInWords } from "@/components/academy/act-words";

describe("an act in words", () => {
  it.each([
    ["role.granted", "Role granted"],
    ["round.hand_over", "Round hand over"],
    ["academy.started", "Academy started"],
    ["coach.hours", "Coach’s hours set"],
  ])("%s", (action, words) => {
    expect(actInWords(action)).toBe(words);
  });
});

describe("the facts of an act", () => {
  it.each([
    [{}, ""],
    [{ role: "coach", athletesFreed: 2 }, "role: coach; athletes freed: 2"],
    [{ guardianPersonId: "Gwen Marsh" }, "guardian: Gwen Marsh"],
    [{ priceCents: 8550, currency: "USD" }, "price: $85.50"],
    [{ priceCents: 8550 }, "price: 8550"],
    [{ effectiveFrom: "2026-11-25" }, "effective from: Wed 25 Nov 2026"],
    [{ grants: false, coachPersonId: null, kind: "dry_work" }, "grants: no; kind: dry work"],
    [{ clearanceId: "pcl_63nry1532fgap3p0vh7n" }, "clearance: pcl_63nry1532fgap3p0vh7n"],
  ])("%o", (facts, words) => {
    expect(factsInWords(facts)).toBe(words);
  });
});
