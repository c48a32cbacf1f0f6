import { inArray } from "drizzle-orm";
import { beforeAll, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { appRouter } from "@/server/api/root";
import { Refusal } from "@/server/domain/errors/refusal";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { callByPath } from "../helpers/call-by-path";
import { FAMILIES, type Family, makeMarkedAcademy, SHARED_SESSIONS } from "../helpers/marked-families";
import { PROCEDURE_INPUTS } from "../helpers/procedure-inputs";

const PATHS = Object.keys(appRouter._def.procedures);
const SUBJECTS = ["child", "teen", "adult", "stranger"] as const;
type Records = Record<(typeof SUBJECTS)[number], AthleteRecord>;

/** Who asks, and what must never come back to them; a teen sees their guardian's name but nothing of a sibling. */
const READERS: readonly { personId: string; not: readonly string[] }[] = [
  { personId: WHO.guardian, not: marksOf("stone", "vale") },
  { personId: WHO.teen.personId, not: [...marksOf("stone", "vale"), "_child"] },
  { personId: WHO.otherGuardian, not: marksOf("marsh", "vale") },
  { personId: WHO.adult.personId, not: marksOf("marsh", "stone") },
  { personId: WHO.child.personId, not: marksOf("stone", "vale", "marsh") },
];

function marksOf(...families: Family[]): string[] {
  return families.flatMap((family) => [...FAMILIES[family].marks]);
}

let academy: TestAcademy;
let records: Records;

beforeAll(async () => {
  ({ academy, records } = await makeMarkedAcademy());
});

/** Every input of a procedure about one athlete: the example, and each of the athlete's rows that it could name. */
function inputsFor(path: string, record: AthleteRecord): unknown[] {
  const rounds = Object.values(record.rounds);
  const shared = Object.values(SHARED_SESSIONS);
  const sessions = [record.bookedSession, record.runningSession, record.loggedSession, ...shared];
  const more: Record<string, unknown[]> = {
    "reviews.read": rounds.map((roundId) => ({ roundId })),
    "reviews.room": rounds.map((roundId) => ({ roundId })),
    "sessions.forFamily": sessions.map((sessionId) => ({ sessionId, athleteId: record.athleteId })),
    "sessions.forStaff": sessions.map((sessionId) => ({ sessionId })),
    "sessions.planning": mixed(record).map((athleteIds) => ({ athleteIds, roundId: null })),
    "people.person": [...FAMILIES.marsh.personIds, ...FAMILIES.stone.personIds].map((personId) => ({
      personId,
    })),
  };
  return [PROCEDURE_INPUTS[path]?.(record, academy), ...(more[path] ?? [])];
}

/** The athlete with each of the others: what is allowed for one is not for two. */
function mixed({ athleteId }: AthleteRecord): string[][] {
  return SUBJECTS.map((name) => [athleteId, records[name].athleteId]);
}

/** The answer as it would be sent, or all that a refusal says. */
async function saidTo(personId: string, path: string, input: unknown): Promise<string> {
  try {
    return JSON.stringify(await callByPath(academy, personId, path, input));
  } catch (error) {
    const cause = error instanceof Error ? error.cause : null;
    const detail = cause instanceof Refusal ? cause.detail : null;
    return JSON.stringify([error instanceof Error ? error.message : "", detail]);
  }
}

function found(text: string, marks: readonly string[]): string[] {
  return marks.filter((mark) => text.includes(mark));
}

describe("no answer and no refusal carries another family's words, names or ids", () => {
  for (const path of PATHS) {
    it(path, async () => {
      for (const { personId, not } of READERS) {
        for (const subject of SUBJECTS) {
          for (const input of inputsFor(path, records[subject])) {
            await academy.discarding(async () => {
              const said = await saidTo(personId, path, input);
              expect(found(said, not), `${personId} about ${subject}: ${said.slice(0, 400)}`).toEqual([]);
            });
          }
        }
      }
    });
  }

  it("looks where there is something to find: each family reads its own words", async () => {
    const read = await Promise.all([
      saidTo(WHO.guardian, "reviews.read", { roundId: records.child.rounds.sent }),
      saidTo(WHO.guardian, "throwing.view", { athleteId: WHO.child.athleteId }),
      saidTo(WHO.guardian, "sessions.forFamily", {
        sessionId: SHARED_SESSIONS.logged,
        athleteId: WHO.child.athleteId,
      }),
      saidTo(WHO.otherGuardian, "sessions.forFamily", {
        sessionId: SHARED_SESSIONS.logged,
        athleteId: WHO.stranger.athleteId,
      }),
    ]);
    for (const words of ["marsh-only keep", "marsh-only addendum"]) expect(read[0]).toContain(words);
    for (const words of ["marsh-only pain", "marsh-only physician"]) expect(read[1]).toContain(words);
    expect(read[2]).toContain("marsh-only log");
    expect(read[2]).toContain('"others":1');
    expect(read[3]).toContain("stone-only log");
  });
});

describe("a session that two families share", () => {
  const families = { marsh: WHO.guardian, stone: WHO.otherGuardian } as const;

  /** Does something as staff, and gives what each family was told of it. */
  async function toldAfter(acts: (path: Act) => Promise<void>): Promise<Record<Family, string[]>> {
    const told: Record<Family, string[]> = { marsh: [], stone: [], vale: [] };
    await academy.discarding(async () => {
      await acts((path, input) => callByPath(academy, WHO.coach, path, input));
      for (const family of Object.keys(told) as Family[]) {
        const rows = await academy.db
          .select()
          .from(notice)
          .where(inArray(notice.toPersonId, [...FAMILIES[family].personIds]));
        told[family] = rows
          .filter((row) => row.createdAtMs === academy.clock.ms)
          .map((row) => JSON.stringify(row));
      }
    });
    return told;
  }
  type Act = (path: string, input: unknown) => Promise<unknown>;

  const line = (athleteId: string, pitches: number, note: string) => {
    return { athleteId, attendance: "came", minutes: 60, pitches, work: [], note };
  };
  const asked = (athleteId: string, pain: object | null) => {
    return { sessionId: SHARED_SESSIONS.running, athleteId, throws: [], pain };
  };

  const acts: [string, (act: Act) => Promise<void>][] = [
    [
      "checked in with pain and logged",
      async (act) => {
        const pain = { kind: "pain", feltOn: "2026-11-25", note: "stone-only elbow" };
        await act("sessions.checkIn", asked(WHO.child.athleteId, null));
        await act("sessions.checkIn", asked(WHO.stranger.athleteId, pain));
        academy.clock.ms += 2 * 3_600_000;
        const lines = [
          line(WHO.child.athleteId, 20, "marsh-only today"),
          line(WHO.stranger.athleteId, 0, "stone-only today"),
        ];
        await act("sessions.log", { sessionId: SHARED_SESSIONS.running, version: 2, lines });
      },
    ],
    [
      "cancelled",
      async (act) => {
        const cancelled = { sessionId: SHARED_SESSIONS.booked, version: 1, reason: "The roof leaks." };
        await act("sessions.cancel", cancelled);
      },
    ],
    [
      "left by one of the two",
      async (act) => {
        const left = { sessionId: SHARED_SESSIONS.booked, version: 1, reason: "stone-only journey" };
        await act("sessions.giveUpPlace", { ...left, athleteId: WHO.stranger.athleteId });
      },
    ],
  ];

  for (const [name, run] of acts) {
    it(`tells neither family anything of the other when it is ${name}`, async () => {
      const nowMs = academy.clock.ms;
      const told = await toldAfter(run);
      academy.clock.ms = nowMs;
      expect(told.stone.length).toBeGreaterThan(0);
      expect(found(told.marsh.join(), marksOf("stone", "vale"))).toEqual([]);
      expect(found(told.stone.join(), marksOf("marsh", "vale"))).toEqual([]);
    });
  }

  it("can be changed by neither family alone", async () => {
    for (const personId of Object.values(families)) {
      const input = { sessionId: SHARED_SESSIONS.booked, version: 1, reason: "Not for us." };
      await expect(callByPath(academy, personId, "sessions.cancel", input)).rejects.toMatchObject({
        code: "NOT_FOUND",
      });
    }
  });
});
