import { TRPCError } from "@trpc/server";
import { beforeAll, describe, expect, it } from "vitest";
import { appRouter } from "@/server/api/root";
import type { ProcedureMeta } from "@/server/api/trpc";
import { type TestAcademy, WHO } from "../helpers/academy";
import type { AthleteRecord } from "../helpers/athlete-record";
import { makeBusyAcademy } from "../helpers/busy-academy";
import { callByPath } from "../helpers/call-by-path";
import { foreignVersions, malformedVersions } from "../helpers/hostile-inputs";
import { PROCEDURE_INPUTS } from "../helpers/procedure-inputs";

interface Declared {
  _def: { meta?: ProcedureMeta; type: "query" | "mutation" };
}

const procedures = Object.entries(appRouter._def.procedures as unknown as Record<string, Declared>);

let academy: TestAcademy;
let record: AthleteRecord;
let foreign: AthleteRecord;

beforeAll(async () => {
  const made = await makeBusyAcademy();
  academy = made.academy;
  record = made.records.child;
  foreign = made.records.stranger;
});

/** A caller for whom the plain example would be in order, so that only the fault can be what is refused. */
function callerFor(action: string): string {
  const isFamily = ["consent.decide", "practice.tick", "pain.clear", "clip.send"].includes(action);
  const isAdmin = /^(people|ledger|academy|notices|audit|agreement\.manage)\b/.test(action);
  if (isFamily) return WHO.guardian;
  return isAdmin ? WHO.admin : WHO.coach;
}

async function refusalOf(path: string, caller: string, input: unknown): Promise<string> {
  try {
    await callByPath(academy, caller, path, input);
    return "OK";
  } catch (error) {
    if (!(error instanceof TRPCError)) return `UNCAUGHT ${String(error)}`;
    return error.code;
  }
}

describe("malformed, missing and huge input", () => {
  for (const [path, procedure] of procedures) {
    it(`${path} refuses it as a bad request and writes nothing`, async () => {
      const caller = callerFor(procedure._def.meta?.action ?? "");
      const example = PROCEDURE_INPUTS[path]?.(record, academy) as Record<string, unknown>;
      await academy.discarding(async () => {
        const before = academy.snapshot();
        for (const { fault, input } of malformedVersions(example)) {
          expect(await refusalOf(path, caller, input), `${path} with ${fault}`).toBe("BAD_REQUEST");
        }
        expect(academy.snapshot(), `${path} wrote something`).toBe(before);
      });
    });
  }
});

describe("ids of another family, and ids of nothing", () => {
  for (const [path, procedure] of procedures) {
    if (!procedure._def.meta?.aboutAthlete) continue;
    it(`${path} answers both alike to a guardian and writes nothing`, async () => {
      const example = PROCEDURE_INPUTS[path]?.(record, academy);
      const theirs = PROCEDURE_INPUTS[path]?.(foreign, academy);
      await academy.discarding(async () => {
        const before = academy.snapshot();
        for (const input of [theirs, ...foreignVersions(example)]) {
          expect(await refusalOf(path, WHO.guardian, input), JSON.stringify(input)).toBe("NOT_FOUND");
        }
        expect(academy.snapshot(), `${path} wrote something`).toBe(before);
      });
    });
  }
});
