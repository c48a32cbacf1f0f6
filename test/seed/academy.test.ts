import { isDeepStrictEqual } from "node:util";
import { drizzle } from "drizzle-orm/better-sqlite3";
import { describe, expect, it } from "vitest";
import { applyMigrations } from "@/db/apply-migrations";
import { assertGuards } from "@/db/client";
import { Sqlite } from "@/db/driver";
import { buildAcademy } from "@/seed/academy";
import { ACADEMY_ZONE } from "@/seed/people";
import { ACADEMY_TABLES, insertAcademyRows } from "@/server/data/academy-rows";
import { audit, firstBrokenAuditRow } from "@/server/data/audit";
import { instantOf } from "@/server/domain/time/calendar-day";
import { BUILT_DAYS, SEED } from "./demo-days";
import { describeMeasures } from "./measure-laws";
import { describeMoney } from "./money-laws";
import { describePeople } from "./people-laws";
import { describeClips, describeReviews } from "./review-laws";
import { describeSessions } from "./session-laws";
import { describeThrows } from "./throwing-laws";
import { describeYears } from "./years-laws";

describe("the demo academy", () => {
  const today = "2026-11-25";
  const first = BUILT_DAYS[0];

  it("is the same to the last id for the same seed and day, and another for another seed", () => {
    const again = buildAcademy({ seed: SEED, today, nowMs: instantOf(today, 850, ACADEMY_ZONE) });
    expect(isDeepStrictEqual(again.rows, first?.rows)).toBe(true);
    expect(isDeepStrictEqual(again.acts, first?.acts)).toBe(true);
    expect(isDeepStrictEqual(again.demoClips, first?.demoClips)).toBe(true);
    const other = buildAcademy({ seed: SEED + 1, today });
    expect(isDeepStrictEqual(other.rows.round, again.rows.round)).toBe(false);
    expect(other.rows.athlete[0]?.id).not.toBe(again.rows.athlete[0]?.id);
  });

  it("takes ten past two in the afternoon when no instant is given, and refuses one of another day", () => {
    expect(isDeepStrictEqual(buildAcademy({ seed: SEED, today }).rows, first?.rows)).toBe(true);
    const nowMs = instantOf("2026-11-26", 850, ACADEMY_ZONE);
    expect(() => buildAcademy({ seed: SEED, today, nowMs })).toThrow(RangeError);
  });
});

describe.each(BUILT_DAYS)("the demo academy on $name", (built) => {
  const { rows, acts, demoClips, nowMs, today } = built;

  it("goes into a fresh database with every constraint, trigger and reference kept, its audit log unbroken", async () => {
    const sqlite = new Sqlite(":memory:");
    sqlite.pragma("foreign_keys = ON");
    applyMigrations(sqlite);
    assertGuards(sqlite);
    const db = drizzle(sqlite);
    await insertAcademyRows(db, rows);
    for (const act of acts) await audit(db, act);
    expect(sqlite.pragma("foreign_key_check")).toEqual([]);
    expect(await firstBrokenAuditRow(db)).toBeNull();
    for (const table of ACADEMY_TABLES) expect(rows[table].length, table).toBeGreaterThan(0);
    sqlite.close();
  });

  it("has the sites, lanes, staff, athletes and season it promises", () => {
    expect(rows.site).toHaveLength(2);
    expect(rows.lane).toHaveLength(5);
    expect(rows.athlete).toHaveLength(40);
    expect(rows.athlete.filter(({ throws }) => throws === "left")).toHaveLength(12);
    expect(rows.staffRole.filter(({ role }) => role === "coach")).toHaveLength(4);
    expect(rows.staffRole.filter(({ role }) => role === "admin")).toHaveLength(2);
    expect(rows.round.length).toBeGreaterThan(260);
    expect(rows.round.length).toBeLessThan(350);
    expect(demoClips.length).toBeGreaterThanOrEqual(22);
    expect(demoClips.length).toBeLessThanOrEqual(30);
  });

  it("lets nothing have happened that is still to come", () => {
    const happened = [
      ...rows.roundEvent.map(({ atMs }) => atMs),
      ...rows.correctionEvent.map(({ atMs }) => atMs),
      ...rows.addendum.map(({ atMs }) => atMs),
      ...rows.throwEntry.map(({ reportedAtMs }) => reportedAtMs),
      ...rows.sessionLog.map(({ loggedAtMs }) => loggedAtMs),
      ...rows.session.flatMap(({ bookedAtMs, cancelledAtMs }) => [bookedAtMs, cancelledAtMs ?? bookedAtMs]),
      ...rows.checkIn.map(({ atMs }) => atMs),
      ...rows.charge.map(({ atMs }) => atMs),
      ...rows.clip.map(({ createdAtMs }) => createdAtMs),
      ...rows.draft.map(({ savedAtMs }) => savedAtMs),
      ...rows.notice.map(({ createdAtMs }) => createdAtMs),
      ...acts.map(({ atMs }) => atMs),
    ];
    expect(happened.filter((atMs) => atMs > nowMs)).toEqual([]);
    expect(rows.throwEntry.filter(({ thrownOn }) => thrownOn > today)).toEqual([]);
    expect(rows.practiceDay.filter(({ practisedOn }) => practisedOn >= today)).toEqual([]);
  });

  it("puts into the audit log what the product would: who joined, and every price as it was set", () => {
    expect(new Set(acts.map(({ action }) => action))).toEqual(
      new Set(["account.invitation", "rate.set", "agreement.drawn", "agreement.closed"]),
    );
    for (const { subjectId, facts } of acts.filter(({ action }) => action === "rate.set")) {
      const rate = rows.rate.find(({ id }) => id === subjectId);
      const { id, effectiveTo, ...set } = rate ?? {};
      expect(facts).toEqual(set);
    }
  });

  describePeople(built);
  describeReviews(built);
  describeClips(built);
  describeMeasures(built);
  describeSessions(built);
  describeThrows(built);
  describeMoney(built);
  describeYears(built);
});
