import type { TRPCError } from "@trpc/server";
import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { DrizzleQueryError } from "drizzle-orm/errors";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { z } from "zod";
import { remark } from "@/db/schema/people";
import type { Context } from "@/server/api/context";
import { pageFault } from "@/server/api/page-fault";
import { command } from "@/server/api/procedures";
import { faultResponse } from "@/server/api/refusal-response";
import { reportFault } from "@/server/api/report-fault";
import { appRouter } from "@/server/api/root";
import { createCallerFactory, router } from "@/server/api/trpc";
import { actorOfSignIn } from "@/server/data/access";
import { keepRemark } from "@/server/data/remarks";
import { Refusal } from "@/server/domain/errors/refusal";
import { log } from "@/server/log";
import { faultFacts } from "@/server/log-fault";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";

const FULL =
  "The academy's disk is full. This was not saved; everything from before is safe. Tell the academy, and try again once there is room.";

const logged = vi.spyOn(log, "error");
beforeEach(() => void logged.mockImplementation(() => undefined));
afterEach(() => void logged.mockReset());

async function contextOf(academy: TestAcademy, personId: string): Promise<Context> {
  const { connections, clock } = academy;
  const actor = await actorOfSignIn(academy.db, `sgn_${personId}`, clock.ms);
  return { connections, actor, nowMs: clock.ms, requestId: null, address: "test" };
}

/** Asks a query over HTTP, as the route does. */
async function ask(academy: TestAcademy, personId: string, path: string, input: unknown) {
  const address = `http://academy.example/api/trpc/${path}?input=${encodeURIComponent(JSON.stringify({ json: input }))}`;
  const response = await fetchRequestHandler({
    endpoint: "/api/trpc",
    req: new Request(address),
    router: appRouter,
    createContext: () => contextOf(academy, personId),
    onError: ({ error, path: at }) => reportFault(error, at ?? "unknown"),
  });
  return { status: response.status, text: await response.text() };
}

/** What the log was told last. */
const lastLogged = () => (logged.mock.calls.at(-1) as unknown[])[0] as { reference: string };

describe("a fault", () => {
  it("reaches the caller as a number alone, and the log under that number with its cause", async () => {
    const academy = await makeAcademy();
    academy.sqlite.exec("DROP TABLE charge");
    const broken = await ask(academy, WHO.admin, "ledger.month", { month: "2026-11" });
    expect(broken.status).toBe(500);
    const { reference } = lastLogged();
    expect(broken.text).toContain(`tell the academy this number: ${reference}.`);
    expect(broken.text).not.toMatch(/no such table|select|\.ts:|node_modules/i);
    expect(JSON.stringify(lastLogged())).toContain("no such table: charge");
  });

  it("in a record is not told as if the caller had filled in a field wrongly", async () => {
    const academy = await makeAcademy();
    academy.sqlite.exec("UPDATE checkpoint SET views = '[\"from_above\"]'");
    const { status, text } = await ask(academy, WHO.coach, "checkpoints.list", {});
    expect(status).toBe(500);
    expect(text).toContain(lastLogged().reference);
    expect(text).not.toMatch(/from_above|views|Please check/);
  });

  it("of input is told field by field, and not logged", async () => {
    const academy = await makeAcademy();
    const { status, text } = await ask(academy, WHO.admin, "ledger.month", { month: "November" });
    expect(status).toBe(400);
    expect(text).toContain("Please check month: a month, as YYYY-MM");
    expect(logged).not.toHaveBeenCalled();
  });

  it("in the answer of a command takes back what the command wrote", async () => {
    const academy = await makeAcademy();
    const odd = router({
      write: command({
        action: "account.own",
        input: z.strictObject({}),
        output: z.strictObject({ count: z.number() }),
        async run({ db }) {
          await keepRemark(db, "written before the answer broke");
          return { count: "one" } as never;
        },
      }),
    });
    const caller = createCallerFactory(odd)(await contextOf(academy, WHO.coach));
    await expect(caller.write({})).rejects.toMatchObject({ code: "INTERNAL_SERVER_ERROR" });
    expect(await academy.db.select().from(remark)).toEqual([]);
  });

  it("that is a full disk is told as one, keeps what was there, and passes when there is room", async () => {
    const academy = await makeAcademy();
    const write = async () => {
      const caller = createCallerFactory(appRouter)(await contextOf(academy, WHO.guardian));
      const { athleteId } = WHO.child;
      const entry = { athleteId, thrownOn: "2026-11-24", kind: "game", pitches: 1 } as const;
      return caller.throwing.log({ ...entry, note: "x".repeat(1000) });
    };
    const pages = academy.sqlite.pragma("page_count", { simple: true }) as number;
    academy.sqlite.pragma(`max_page_count = ${pages}`);
    let before = academy.snapshot();
    let failure: unknown = null;
    for (let tries = 0; tries < 50 && !failure; tries += 1) {
      before = academy.snapshot();
      await write().catch((error: unknown) => (failure = error));
    }
    expect(failure).toMatchObject({ code: "SERVICE_UNAVAILABLE", message: FULL });
    expect(academy.snapshot()).toBe(before);
    reportFault(failure as TRPCError, "throwing.log");
    expect(failure).toMatchObject({ message: FULL });
    expect(logged).toHaveBeenCalled();
    academy.sqlite.pragma("max_page_count = 1000000");
    await write();
  });

  it("that is a full disk is told by a route handler too", async () => {
    const full = Object.assign(new Error("ENOSPC: no space left on device, write"), { code: "ENOSPC" });
    const answer = faultResponse(full, "/api/uploads");
    expect(answer.status).toBe(503);
    expect(await answer.json()).toEqual({ problem: "disk_full", sentence: FULL });
    expect(JSON.stringify(lastLogged())).toContain("no space left");
  });

  it("of a route handler and of a page is told by its number too", async () => {
    const answer = await faultResponse(new Error("There is no site sit_1."), "/api/exports/month").text();
    expect(answer).toContain(lastLogged().reference);
    expect(answer).not.toContain("sit_1");
    const shown = pageFault(new Error("outer", { cause: new Error("There is no site sit_2.") }));
    expect(shown).toMatchObject({ digest: lastLogged().reference });
    expect(shown.message).not.toContain("sit_2");
    expect(JSON.stringify(lastLogged())).toContain("sit_2");
  });
});

describe("what the log keeps", () => {
  it("of a failed statement is its text and place, and none of its values", () => {
    const values = ["gwen.marsh@test.example", "Gwen"];
    const cause = new Error("UNIQUE constraint failed: account.email");
    const facts = faultFacts(new DrizzleQueryError("insert into account values (?, ?)", values, cause));
    expect(facts.words).toBe("insert into account values (?, ?)");
    expect(facts.cause?.words).toBe(cause.message);
    expect(facts.at.length).toBeGreaterThan(0);
    expect(JSON.stringify(facts)).not.toContain("Gwen");
    expect(JSON.stringify(facts)).not.toContain("gwen");
  });

  it.each([
    [
      "a refusal is its reason",
      new Refusal({ reason: "consent_missing", athleteGivenName: "Kit" }),
      "consent_missing",
    ],
    ["unreadable JSON is nothing", new SyntaxError('Unexpected token K in "Kit"'), ""],
    [
      "another error is its own words",
      new RangeError("A step is a whole minute or more: 0"),
      "A step is a whole minute or more: 0",
    ],
    ["a thrown text is nothing", "Kit", ""],
  ])("of %s", (_what, error, words) => {
    expect(faultFacts(error)).toMatchObject({ words });
  });
});
