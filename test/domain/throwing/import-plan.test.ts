import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { importKeyOf, keptKeyOf } from "@/server/domain/throwing/import-key";
import { type KnownLog, planImport } from "@/server/domain/throwing/import-plan";
import type { ReadRow } from "@/server/domain/throwing/import-row";
import { NO_GAME } from "@/server/domain/throwing/validate-game";

const ROW: ReadRow = { thrownOn: "2026-04-18", kind: "game", pitches: 45, game: null, note: "" };
const NOTHING: KnownLog = { importKeys: new Set(), entries: [] };
const lines = (rows: readonly ReadRow[]) => rows.map((row, at) => ({ line: at + 2, row }));
const plan = (rows: readonly ReadRow[], known = NOTHING) => planImport("ath_kit", lines(rows), known);

/** The log after the new rows of a plan were added. */
function logAfter({ fresh }: ReturnType<typeof plan>): KnownLog {
  return { importKeys: new Set(fresh.map((row) => row.importKey)), entries: [] };
}

describe("the rows of a file", () => {
  it("are all new to an empty log, two that are alike too", () => {
    const { fresh, there } = plan([ROW, ROW, { ...ROW, pitches: 46 }]);
    expect(fresh.map(({ line }) => line)).toEqual([2, 3, 4]);
    expect(new Set(fresh.map(({ importKey }) => importKey)).size).toBe(3);
    expect(there).toEqual([]);
  });

  it("add nothing the second time, whatever words stand beside the figures by then", () => {
    const known = logAfter(plan([ROW, ROW]));
    const again = plan([{ ...ROW, note: "windy" }, ROW], known);
    expect(again.fresh).toEqual([]);
    expect(again.there.map(({ line }) => line)).toEqual([2, 3]);
  });

  it("that are new in a longer file are added alone", () => {
    const { fresh } = plan([ROW, { ...ROW, thrownOn: "2026-04-25" }], logAfter(plan([ROW])));
    expect(fresh.map(({ line }) => line)).toEqual([3]);
  });

  it("just like an entry made by hand are there already, each entry for one row", () => {
    const known = { ...NOTHING, entries: [{ thrownOn: "2026-04-18", kind: "game", pitches: 45 } as const] };
    const { fresh, there } = plan([ROW, ROW, { ...ROW, kind: "lesson" }], known);
    expect(there.map(({ line }) => line)).toEqual([2]);
    expect(fresh.map(({ line }) => line)).toEqual([3, 4]);
  });

  it("add nothing twice, in any order, for any file", () => {
    const row = fc.record({
      thrownOn: fc.constantFrom("2026-04-18", "2026-04-19"),
      kind: fc.constantFrom("game" as const, "bullpen" as const),
      pitches: fc.integer({ min: 0, max: 3 }),
      game: fc.constant(null),
      note: fc.string({ maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 12 }), (rows) => {
        const first = plan(rows);
        expect(first.fresh).toHaveLength(rows.length);
        expect(plan(rows.toReversed(), logAfter(first)).fresh).toEqual([]);
      }),
    );
  });
});

describe("keys", () => {
  it("differ by athlete, by every figure and by team", () => {
    const game = { ...NO_GAME, opponent: "" };
    const rows: ReadRow[] = [
      ROW,
      { ...ROW, game },
      { ...ROW, game: { ...game, outs: 3 } },
      { ...ROW, game: { ...game, inningsCaught: 3 } },
      { ...ROW, game: { ...game, pitchesAtLastBatter: 3 } },
      { ...ROW, game: { ...game, intentionalWalks: 3 } },
      { ...ROW, game: { ...game, teamId: "tea_own" } },
    ];
    const keys = rows.flatMap((row) => ["ath_kit", "ath_pip"].map((id) => importKeyOf(id, row, 1)));
    expect(new Set(keys).size).toBe(keys.length);
    expect(keptKeyOf("ath_kit", "a")).not.toBe(keptKeyOf("ath_pip", "a"));
  });
});
