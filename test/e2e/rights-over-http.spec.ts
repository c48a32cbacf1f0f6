import { randomBytes } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { type APIRequestContext, request } from "@playwright/test";
import { ROUTE_RIGHTS } from "@/server/api/route-rights";
import type { Action } from "@/server/domain/access/rights";
import { Sqlite } from "../../db/driver";
import { expect, type Person, test } from "./academy";
import { PORT, START_MS } from "./start-academy";

const BASE = `http://localhost:${PORT}`;
const PEOPLE: readonly (Person | "nobody")[] = ["admin", "coach", "guardian", "athlete", "nobody"];

/** Who may do what to a clip of the guardian's child, and to one of the athlete, as the table of rights says. */
const MAY: Record<"child" | "athlete", Partial<Record<Action, readonly string[]>>> = {
  child: {
    "clip.send": ["guardian"],
    "clip.watch": ["admin", "coach", "guardian"],
    "clip.poster": ["coach"],
    "review.write": ["coach"],
    "review.read": ["admin", "coach", "guardian"],
    "ledger.export": ["admin"],
  },
  athlete: {
    "clip.send": ["athlete"],
    "clip.watch": ["admin", "coach", "athlete"],
    "clip.poster": ["coach"],
    "review.write": ["coach"],
    "review.read": ["admin", "coach", "athlete"],
    "ledger.export": ["admin"],
  },
};

async function signedIn(who: Person | "nobody"): Promise<APIRequestContext> {
  const context = await request.newContext({ baseURL: BASE });
  if (who === "nobody") return context;
  const { csrfToken } = await (await context.get("/api/auth/csrf")).json();
  const answer = await context.post("/api/auth/callback/credentials", {
    form: {
      csrfToken,
      email: `${who}@slabside.example`,
      password: "fastball-over-the-corner",
      json: "true",
    },
  });
  expect(answer.ok(), `${who} signs in`).toBe(true);
  return context;
}

function database() {
  return new Sqlite(`${process.env.SLABSIDE_E2E_FOLDER}/data/slabside.sqlite`, { readonly: true });
}

function athleteOf(who: "child" | "athlete"): string {
  const sqlite = database();
  const query =
    who === "child"
      ? "SELECT g.athlete_id AS id FROM guardianship g JOIN account a ON a.person_id = g.guardian_person_id JOIN athlete t ON t.id = g.athlete_id WHERE a.email = 'guardian@slabside.example' ORDER BY t.born_on DESC"
      : "SELECT t.id FROM athlete t JOIN account a ON a.person_id = t.person_id WHERE a.email = 'athlete@slabside.example'";
  const { id } = sqlite.prepare(query).get() as { id: string };
  sqlite.close();
  return id;
}

function readyClipOf(athleteId: string): string | null {
  const sqlite = database();
  const row = sqlite
    .prepare("SELECT id FROM clip WHERE athlete_id = ? AND state = 'ready' LIMIT 1")
    .get(athleteId) as { id: string } | undefined;
  sqlite.close();
  return row?.id ?? null;
}

/** Whoever of the family uploaded a clip may picture it too: their name before the @, or null for a drawn one. */
function uploaderOf(clipId: string): string | null {
  const sqlite = database();
  const row = sqlite
    .prepare(
      "SELECT a.email FROM clip c JOIN account a ON a.person_id = c.uploaded_by_person_id WHERE c.id = ?",
    )
    .get(clipId) as { email: string } | undefined;
  sqlite.close();
  return row?.email.split("@")[0] ?? null;
}

/** A note that was spoken on a sent round of the athlete, put there as the academy keeps it; and that round. */
function spokenOn(athleteId: string): { voiceId: string; roundId: string } {
  const folder = process.env.SLABSIDE_E2E_FOLDER;
  const sqlite = new Sqlite(`${folder}/data/slabside.sqlite`);
  const sent = sqlite
    .prepare("SELECT round_id, coach_person_id FROM review WHERE athlete_id = ? ORDER BY sent_at_ms LIMIT 1")
    .get(athleteId) as { round_id: string; coach_person_id: string };
  const storageName = randomBytes(16).toString("hex");
  const voiceId = `voi_${storageName}`;
  mkdirSync(`${folder}/data/clips/${storageName.slice(0, 2)}/${storageName}`, { recursive: true });
  writeFileSync(`${folder}/data/clips/${storageName.slice(0, 2)}/${storageName}/voice`, "voice");
  sqlite
    .prepare("INSERT INTO voice_note VALUES (?, ?, ?, ?, 'sent', ?, 'audio/webm', 5, ?, 20, ?)")
    .run(voiceId, sent.round_id, athleteId, sent.coach_person_id, storageName, "0".repeat(64), START_MS);
  sqlite.close();
  return { voiceId, roundId: sent.round_id };
}

/* An upload that does not exist answers everybody alike; its rights are proved where uploads are. */
const WALKED = ROUTE_RIGHTS.filter(
  (right) => !right.path.startsWith("/api/uploads") || right.method === "POST",
);

for (const subject of ["child", "athlete"] as const) {
  for (const who of PEOPLE) {
    test(`route handlers open to ${who} about the ${subject} as the table of rights says`, async () => {
      test.setTimeout(600_000);
      const athleteId = athleteOf(subject);
      await expect.poll(() => readyClipOf(athleteId), { timeout: 540_000 }).not.toBeNull();
      const clipId = readyClipOf(athleteId) ?? "";
      const ids = { clipId, athleteId, ...spokenOn(athleteId) };
      const context = await signedIn(who);
      for (const right of WALKED) {
        const status = await statusOf(context, right.method, right.path, ids);
        const isOpen = ![401, 404].includes(status);
        const where = `${right.method} ${right.path} answered ${status}`;
        const isUploader = right.action === "clip.poster" && who === uploaderOf(clipId);
        expect(isOpen, where).toBe(isUploader || (MAY[subject][right.action]?.includes(who) ?? false));
      }
      await context.dispose();
    });
  }
}

async function statusOf(
  context: APIRequestContext,
  method: string,
  path: string,
  ids: { clipId: string; athleteId: string; voiceId: string; roundId: string },
): Promise<number> {
  if (path.startsWith("/api/uploads")) {
    const metadata = `athleteId ${Buffer.from(ids.athleteId).toString("base64")}`;
    const answer = await context.fetch("/api/uploads", {
      method,
      headers: { "tus-resumable": "1.0.0", "upload-length": "1000", "upload-metadata": metadata },
    });
    return answer.status();
  }
  const filled = path
    .replace("[clipId]", ids.clipId)
    .replace("[voiceId]", ids.voiceId)
    .replace("[roundId]", ids.roundId);
  const address = filled + (path.endsWith("month") ? "?month=2026-11" : "");
  const isPut = method === "PUT";
  const answer = await context.fetch(address, {
    method,
    ...(isPut ? { data: Buffer.from("no picture"), headers: { "content-type": "image/jpeg" } } : {}),
  });
  return answer.status();
}

test("a command from another site, without its id, or as something other than JSON is refused", async () => {
  const context = await signedIn("guardian");
  const body = JSON.stringify({ json: { email: "guardian@slabside.example" } });
  const right = { "content-type": "application/json", "idempotency-key": crypto.randomUUID() };
  const cases: [string, Record<string, string>, number][] = [
    ["another site", { ...right, origin: "https://elsewhere.example" }, 403],
    ["a cross-site fetch", { ...right, "sec-fetch-site": "cross-site" }, 403],
    ["a form", { ...right, "content-type": "text/plain" }, 415],
    ["no id of its own", { "content-type": "application/json" }, 400],
  ];
  for (const [what, headers, status] of cases) {
    const answer = await context.post("/api/trpc/account.askReset", { headers, data: body });
    expect(answer.status(), what).toBe(status);
  }
  await context.dispose();
});

test("pages carry a content policy with a nonce, and nothing may frame them", async () => {
  const context = await request.newContext({ baseURL: BASE });
  const answer = await context.get("/sign-in");
  const policy = answer.headers()["content-security-policy"] ?? "";
  expect(policy).toMatch(/script-src 'self' 'nonce-[^']+' 'strict-dynamic'(;|$)/);
  expect(policy).toContain("frame-ancestors 'none'");
  expect(policy).toContain("base-uri 'none'");
  expect(answer.headers()["x-content-type-options"]).toBe("nosniff");
  expect(answer.headers()["permissions-policy"]).toBe("camera=(self), microphone=(self), geolocation=()");
  await context.dispose();
});
