import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type APIRequestContext, type APIResponse, request } from "@playwright/test";
import { eq } from "drizzle-orm";
import { account } from "@/db/schema/people";
import { hashPassword } from "@/server/auth/password";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import { serve } from "../e2e/start-academy";
import { makeAcademy, WHO } from "../helpers/academy";

/** The port of the academy that clips are tried out in; CLIPS_PORT names another where this one is in use. */
export const CLIPS_PORT = Number(process.env.CLIPS_PORT ?? 3979);
export const CLIPS_ADDRESS = `http://localhost:${CLIPS_PORT}`;

/** Those who sign in to it; the guardian's athletes are `WHO.child` and `WHO.teen`. */
export const CLIPS_COACH = "cole.rivers.per_coach@test.example";
export const CLIPS_GUARDIAN = "gwen.marsh.per_guardian@test.example";
export const CLIPS_PASSWORD = "a seam across the fingers";

/** What the clock of the journeys stands on. */
const FILMED_ON = "2026-11-25";

/** As many as go into one part of a round. */
export const CLIPS_A_ROUND = 6;

/** An academy of a few people on a folder of its own, served as it is for everybody. */
export interface ClipsAcademy {
  folder: string;
  stop: () => Promise<void>;
}

/** Starts it; nothing is drawn in it meanwhile, as the demo's clips are. */
export async function startClipsAcademy(): Promise<ClipsAcademy> {
  const folder = mkdtempSync(join(tmpdir(), "slabside-clips-"));
  mkdirSync(join(folder, "data"));
  const { db, sqlite } = await makeAcademy();
  const passwordHash = await hashPassword(CLIPS_PASSWORD);
  for (const personId of [WHO.coach, WHO.guardian]) {
    await db.update(account).set({ passwordHash }).where(eq(account.personId, personId));
  }
  sqlite.exec(`VACUUM INTO '${join(folder, "data/slabside.sqlite")}'`);
  sqlite.close();
  writeFileSync(join(folder, "data/academy.txt"), "own\n");
  const stop = await serve(folder, CLIPS_PORT);
  return {
    folder,
    stop: async () => {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Signs in over HTTP; its cookies open pages as well. */
export async function signedIn(email: string): Promise<APIRequestContext> {
  const context = await request.newContext({ baseURL: CLIPS_ADDRESS });
  const { csrfToken } = await (await context.get("/api/auth/csrf")).json();
  const form = { csrfToken, email, password: CLIPS_PASSWORD, json: "true" };
  await ok(await context.post("/api/auth/callback/credentials", { form }));
  return context;
}

const PIECE_BYTES = 6_000_000;

/** Uploads a file as a guardian's browser does, in pieces. @returns the academy's answer to the last */
export async function upload(
  guardian: APIRequestContext,
  athleteId: string,
  file: Uint8Array,
): Promise<APIResponse> {
  const tus = { "tus-resumable": "1.0.0" };
  const begun = await guardian.post("/api/uploads", {
    headers: {
      ...tus,
      "upload-length": String(file.byteLength),
      "upload-metadata": `athleteId ${Buffer.from(athleteId).toString("base64")}`,
    },
  });
  await ok(begun);
  const path = begun.headers().location ?? "";
  let answer = begun;
  for (let offset = 0; offset < file.byteLength && answer.ok(); offset += PIECE_BYTES) {
    answer = await guardian.patch(path, {
      headers: { ...tus, "upload-offset": String(offset), "content-type": "application/offset+octet-stream" },
      data: Buffer.from(file.subarray(offset, offset + PIECE_BYTES)),
    });
  }
  return answer;
}

/** A film on its way to the coach, and from where it was taken. */
export interface FilmToSend {
  file: Uint8Array;
  view?: CameraView;
}

/**
 * Uploads films and sends them as one new round, or as the reply of one, dry work that costs the arm nothing.
 * @returns the round's id
 */
export async function sendRound(
  athleteId: string,
  films: readonly FilmToSend[],
  replyTo: string | null = null,
): Promise<string> {
  const guardian = await signedIn(CLIPS_GUARDIAN);
  const clips = [];
  for (const { file, view = "open_side" } of films) {
    const answer = await upload(guardian, athleteId, file);
    await ok(answer);
    const { clipId } = await answer.json();
    const said = { pitchType: null, pitchesThrown: 0, alreadyOnLog: false, note: "", filmedOn: FILMED_ON };
    clips.push({ clipId, view, ...said });
  }
  const { roundId } = await command(guardian, "rounds.send", { athleteId, roundId: replyTo, clips });
  await guardian.dispose();
  return String(roundId);
}

/** Does a command over HTTP. @returns what it answers */
export async function command(
  person: APIRequestContext,
  name: string,
  input: unknown,
): Promise<Record<string, unknown>> {
  const answer = await person.post(`/api/trpc/${name}`, {
    headers: { "content-type": "application/json", "idempotency-key": crypto.randomUUID() },
    data: JSON.stringify({ json: input }),
  });
  await ok(answer);
  return (await answer.json()).result.data.json;
}

async function ok(answer: APIResponse): Promise<void> {
  if (!answer.ok()) throw new Error(`${answer.url()} answered ${answer.status()}: ${await answer.text()}`);
}
