import { drizzle } from "drizzle-orm/better-sqlite3";
import { beforeAll, expect, it } from "vitest";
import { applyMigrations } from "@/db/apply-migrations";
import { Sqlite } from "@/db/driver";
import { ACADEMY_ZONE } from "@/seed/people";
import type { Scope } from "@/server/api/context";
import { loadEvidence } from "@/server/api/evidence/load-evidence";
import { changesSince } from "@/server/api/season-changes-view";
import { insertAcademyRows } from "@/server/data/academy-rows";
import { repeatedMeasures } from "@/server/data/measurements";
import { measureErrors } from "@/server/domain/mechanics/measure-error";
import { daysBetween } from "@/server/domain/time/calendar-day";
import type { BuiltDay } from "./demo-days";

/** What the demo promises of the athlete with three seasons behind them. */
export function describeYears({ rows, today }: BuiltDay): void {
  const ofThem = <Row extends { athleteId: string }>(all: readonly Row[], id: string) =>
    all.filter(({ athleteId }) => athleteId === id);
  const byRounds = rows.athlete
    .map(({ id }) => ({ id, rounds: ofThem(rows.round, id) }))
    .sort((a, b) => b.rounds.length - a.rounds.length);
  const { id: athleteId = "", rounds = [] } = byRounds[0] ?? {};
  let told: ReturnType<typeof changesSince>["all"] = [];
  let known: string[] = [];

  beforeAll(async () => {
    const sqlite = new Sqlite(":memory:");
    applyMigrations(sqlite);
    const db = drizzle(sqlite);
    await insertAcademyRows(db, rows);
    const scope = { db, athlete: { athleteId, zone: ACADEMY_ZONE } } as unknown as Scope;
    told = changesSince(await loadEvidence(scope), ACADEMY_ZONE).all;
    const errors = measureErrors(await repeatedMeasures(db));
    known = errors.filter(({ sameDay }) => sameDay?.isEnough).map(({ kind, view }) => `${kind} ${view}`);
    sqlite.close();
  });

  it("has one athlete with about sixty rounds and fifteen hundred observations of nearly three years", () => {
    expect(rounds.length).toBeGreaterThanOrEqual(50);
    expect(byRounds[1]?.rounds.length).toBeLessThan(25);
    const seen = ofThem(rows.judgement, athleteId).length + ofThem(rows.measurement, athleteId).length;
    expect(seen).toBeGreaterThan(1500);
    expect(seen).toBeLessThan(3500);
    const days = ofThem(rows.clip, athleteId).flatMap(({ filmedOn }) => filmedOn ?? []);
    expect(daysBetween([...days].sort()[0] ?? today, today)).toBeGreaterThan(930);
  });

  it("knows by several deliveries of a day how far a measure is off", () => {
    expect(known.length).toBeGreaterThanOrEqual(2);
  });

  it("tells of them what improved, what did not change and what cannot be told yet", () => {
    const outcomes = (outcome: string) => told.filter((each) => each.outcome === outcome).length;
    expect(outcomes("improved")).toBeGreaterThanOrEqual(3);
    expect(outcomes("no_change")).toBeGreaterThanOrEqual(1);
    expect(outcomes("too_few")).toBeGreaterThanOrEqual(1);
  });
}
