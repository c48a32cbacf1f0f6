import { execFile } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { beforeAll, describe, expect, it } from "vitest";
import { assertGuards, openSqlite } from "@/db/client";
import { makeAcademy } from "../helpers/academy";
import { scratchFolder } from "../helpers/scratch-folder";

const PROCESSES = 4;
const TRIES_EACH = 120;

const run = promisify(execFile);
const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = scratchFolder();

interface Outcome {
  granted: string[];
  refused: number;
}

let outcomes: Outcome[];
let path: string;

beforeAll(async () => {
  path = join(folder, "contested.sqlite");
  const academy = await makeAcademy();
  academy.sqlite.exec(`VACUUM INTO '${path}'`);
  const guarded = openSqlite(path);
  assertGuards(guarded);
  guarded.close();
  outcomes = await Promise.all(
    Array.from({ length: PROCESSES }, async (_, place) => {
      const booker = ["--import", "tsx", "test/helpers/contested-booker.ts"];
      const { stdout } = await run("node", [...booker, path, String(place), String(TRIES_EACH)], {
        cwd: root,
      });
      return JSON.parse(stdout) as Outcome;
    }),
  );
}, 180_000);

describe("four processes that fight for the same times", () => {
  it("are each answered for every try, granted some and refused some", () => {
    for (const { granted, refused } of outcomes) expect(granted.length + refused).toBe(TRIES_EACH);
    expect(outcomes.filter(({ granted }) => granted.length > 0).length).toBeGreaterThan(1);
    expect(outcomes.every(({ refused }) => refused > 0)).toBe(true);
  });

  it("leave every booking that was acknowledged, and no other", () => {
    const sqlite = openSqlite(path);
    const kept = sqlite.prepare("SELECT id FROM session ORDER BY id").pluck().all();
    expect(kept).toEqual(outcomes.flatMap(({ granted }) => granted).sort());
    sqlite.close();
  });

  it("never put a coach, a lane or an athlete in two places, and leave no half booking", () => {
    const sqlite = openSqlite(path);
    const overlaps = sqlite
      .prepare(
        `SELECT a.id, b.id FROM claim AS a JOIN claim AS b ON a.resource = b.resource AND a.id < b.id
         WHERE a.starts_at_ms < b.ends_at_ms AND b.starts_at_ms < a.ends_at_ms`,
      )
      .all();
    expect(overlaps).toEqual([]);
    const strays = sqlite
      .prepare(
        `SELECT id FROM session WHERE (SELECT count(*) FROM claim WHERE session_id = session.id
           AND resource IN ('coach:' || coach_person_id, 'lane:' || lane_id)) <> 2`,
      )
      .all();
    expect(strays).toEqual([]);
    expect(sqlite.pragma("integrity_check", { simple: true })).toBe("ok");
    sqlite.close();
  });
});
