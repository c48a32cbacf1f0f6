import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { answerMonthExport } from "@/server/api/handlers/month-export";
import { type TestAcademy, WHO } from "../helpers/academy";
import { makeBusyAcademy } from "../helpers/busy-academy";

const desk = vi.hoisted(() => ({ who: "", academy: null as TestAcademy | null }));

vi.mock("@/server/api/request-context", async () => {
  const { actorOfSignIn } = await import("@/server/data/access");
  return {
    requestContext: async () => {
      if (!desk.academy) throw new Error("No academy was made.");
      const { connections, db, clock } = desk.academy;
      const actor = desk.who ? await actorOfSignIn(db, `sgn_${desk.who}`, clock.ms) : null;
      return { connections, actor, nowMs: clock.ms, requestId: null, address: "test" };
    },
  };
});

beforeAll(async () => {
  desk.academy = (await makeBusyAcademy()).academy;
});

const ask = (who: string, query: string) => {
  desk.who = who;
  return answerMonthExport(new Request(`http://localhost/api/exports/month${query}`));
};

describe("the month's file over HTTP", () => {
  it("is UTF-8 CSV to be saved under the month's name, never cached", async () => {
    const answer = await ask(WHO.admin, "?month=2026-11");
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("text/csv; charset=utf-8");
    expect(answer.headers.get("content-disposition")).toBe('attachment; filename="slabside-2026-11.csv"');
    expect(answer.headers.get("cache-control")).toBe("private, no-store");
    const rows = parse(await answer.text(), { columns: true }) as Record<string, string>[];
    expect(rows.at(-1)).toMatchObject({ Date: "Total", Amount: "320.00", Currency: "USD" });
  });

  for (const query of ["", "?month=", "?month=2026-13", "?month=2026-11-01", "?month=%27%20OR%201"]) {
    it(`says which month it needs instead of guessing: "${query}"`, async () => {
      const answer = await ask(WHO.admin, query);
      expect(answer.status).toBe(400);
      expect(await answer.json()).toMatchObject({ sentence: expect.stringContaining("?month=2026-11") });
    });
  }

  it("is for admins alone", async () => {
    const statuses = [];
    for (const who of ["", WHO.coach, WHO.guardian, WHO.adult.personId]) {
      statuses.push((await ask(who, "?month=2026-11")).status);
    }
    expect(statuses).toEqual([401, 404, 404, 404]);
  });
});
