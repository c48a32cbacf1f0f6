import { describe, expect, it } from "vitest";
import { armFreeOn } from "@/server/domain/throwing/arm-free-on";
import { ask } from "./arm-question";

describe("the day from which a clip may be asked for", () => {
  it("is the day itself for an arm the book leaves a pitch", () => {
    expect(armFreeOn(ask("2026-11-26"))).toBe("2026-11-26");
    expect(armFreeOn(ask("2026-11-25", { thrown: [["2026-11-25", 84]] }))).toBe("2026-11-25");
  });

  it("is the first free day for one that rests, and for one that has used up its day", () => {
    expect(armFreeOn(ask("2026-11-26", { thrown: [["2026-11-25", 51]] }))).toBe("2026-11-29");
    expect(armFreeOn(ask("2026-11-25", { thrown: [["2026-11-25", 85]] }))).toBe("2026-11-30");
  });

  it("is the day itself for an age the book has no number for", () => {
    expect(armFreeOn(ask("2026-11-26", { bornOn: "2001-05-10" }))).toBe("2026-11-26");
  });

  it("is not known while pain stops the arm", () => {
    const felt = { firstFeltOn: "2026-11-20", lastFeltOn: "2026-11-20", reportIds: ["report"] };
    expect(armFreeOn(ask("2026-11-26", { pain: { kind: "pain", ...felt } }))).toBeNull();
  });
});
