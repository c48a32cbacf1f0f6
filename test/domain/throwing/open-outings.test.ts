import { describe, expect, it } from "vitest";
import { openOutings } from "@/server/domain/throwing/open-outings";
import type { ThrowEntry, ThrowKind } from "@/server/domain/throwing/throw-entry";
import { NO_GAME } from "@/server/domain/throwing/validate-game";

const outing = { id: "out_1", plannedOn: "2026-11-21", kind: "game" as const, pitches: 60, teamId: null };

function entry(kind: ThrowKind, thrownOn: string, more: Partial<ThrowEntry> = {}): ThrowEntry {
  return {
    id: "thr_1",
    athleteId: "ath_1",
    thrownOn,
    kind,
    pitches: 55,
    ...NO_GAME,
    replacesId: null,
    reportedAtMs: 1,
    ...more,
  };
}

describe("planned outings against the log", () => {
  it("leaves out an outing whose day has a game on the log, so that it does not count twice", () => {
    expect(openOutings([outing], [entry("game", "2026-11-21")])).toEqual([]);
  });

  it("keeps one that was never logged, or whose day has only a bullpen", () => {
    expect(openOutings([outing], [])).toEqual([outing]);
    expect(openOutings([outing], [entry("bullpen", "2026-11-21")])).toEqual([outing]);
  });

  it("keeps one whose logged game was corrected to another day", () => {
    const corrected = entry("game", "2026-11-22", { id: "thr_2", replacesId: "thr_1" });
    expect(openOutings([outing], [entry("game", "2026-11-21"), corrected])).toEqual([outing]);
  });
});
