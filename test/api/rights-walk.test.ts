import { TRPCError } from "@trpc/server";
import { beforeAll, describe, expect, it } from "vitest";
import { appRouter } from "@/server/api/root";
import type { ProcedureMeta } from "@/server/api/trpc";
import { actorOfSignIn, athleteScope } from "@/server/data/access";
import { relationsOf } from "@/server/domain/access/relation";
import { may, RIGHTS } from "@/server/domain/access/rights";
import { Refusal } from "@/server/domain/errors/refusal";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { callByPath } from "../helpers/call-by-path";
import { PROCEDURE_INPUTS } from "../helpers/procedure-inputs";

interface Declared {
  _def: { meta?: ProcedureMeta; type: "query" | "mutation"; output?: unknown; inputs: unknown[] };
}

const procedures = Object.entries(appRouter._def.procedures as unknown as Record<string, Declared>);

/** Everybody there is, by what they are to the child, the teen, the adult and the stranger's child. */
const CALLERS = [
  null,
  WHO.admin,
  WHO.coach,
  WHO.otherCoach,
  WHO.guardian,
  WHO.otherGuardian,
  WHO.teen.personId,
  WHO.adult.personId,
] as const;
/**
 * Procedures that turn away some whom the table lets in, each with a test of its own: a clip that waits is its sender's, a
 * request for a second measure is taken back by who asked, or an admin.
 */
const NARROWER = ["clips.discard", "measurements.withdraw"];
const SUBJECTS = ["child", "teen", "adult", "stranger"] as const;

let academy: TestAcademy;
let records: Record<(typeof SUBJECTS)[number], AthleteRecord>;

beforeAll(async () => {
  ({ academy, records } = await makeBusyAcademy());
});

describe("every procedure", () => {
  it("names an action of the table and answers through an allow-list", () => {
    for (const [path, procedure] of procedures) {
      expect(Object.keys(RIGHTS), path).toContain(procedure._def.meta?.action);
      expect(procedure._def.output, `${path} has an output schema`).toBeDefined();
    }
  });

  it("has an example input for this walk, and there are no inputs for what is gone", () => {
    expect(Object.keys(PROCEDURE_INPUTS).sort()).toEqual(procedures.map(([path]) => path).sort());
  });
});

describe("every procedure by every caller, about every athlete", () => {
  for (const [path, procedure] of procedures) {
    it(path, async () => {
      const meta = procedure._def.meta as ProcedureMeta;
      const subjects = meta.aboutAthlete ? SUBJECTS : (["child"] as const);
      for (const subject of subjects) {
        for (const personId of CALLERS) {
          await walkOne(path, meta, personId, subject);
        }
      }
    });
  }
});

async function walkOne(
  path: string,
  meta: ProcedureMeta,
  personId: string | null,
  subject: (typeof SUBJECTS)[number],
) {
  const record = records[subject];
  const allowed = await isAllowed(meta, personId, record);
  const where = `${path} by ${personId ?? "nobody"} about ${subject}`;
  const input = PROCEDURE_INPUTS[path]?.(record, academy);
  await academy.discarding(async () => {
    const before = academy.snapshot();
    const outcome = await outcomeOf(() => callByPath(academy, personId, path, input));
    if (allowed && NARROWER.includes(path)) return;
    if (allowed) {
      expect(outcome, `${where} is allowed`).not.toMatch(/^(NOT_FOUND|UNAUTHORIZED|BAD_REQUEST|INTERNAL)/);
    } else {
      expect(outcome, `${where} must be turned away`).toMatch(
        /^(NOT_FOUND not_found|UNAUTHORIZED not_signed_in)$/,
      );
      expect(academy.snapshot(), `${where} wrote something`).toBe(before);
    }
  });
}

async function isAllowed(meta: ProcedureMeta, personId: string | null, record: AthleteRecord) {
  const actor = personId ? await actorOfSignIn(academy.db, `sgn_${personId}`, academy.clock.ms) : null;
  const athlete = meta.aboutAthlete ? await athleteScope(academy.db, record.athleteId) : null;
  return may(meta.action, relationsOf(actor, athlete, "2026-11-25"));
}

/** "OK", or the code with the refusal's reason; a link that is spent is an answer of its own, not a closed door. */
async function outcomeOf(call: () => Promise<unknown>): Promise<string> {
  try {
    await call();
    return "OK";
  } catch (error) {
    if (!(error instanceof TRPCError)) throw error;
    const reason = error.cause instanceof Refusal ? error.cause.detail.reason : error.message;
    return reason === "link_spent" ? "REFUSED link_spent" : `${error.code} ${reason}`;
  }
}
