import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { createCanvas } from "@napi-rs/canvas";
import { beforeEach, describe, expect, it } from "vitest";
import { clip, clipView } from "@/db/schema/clips";
import { consent } from "@/db/schema/people";
import { clipPath, makeClipFolder } from "@/server/media/clip-store";
import { WHO } from "../helpers/academy";
import { clipRoutes, routes } from "../helpers/clip-routes";
import { allClips, said } from "../helpers/clips";
import { makeClip } from "../helpers/make-clip";
import { beginUpload, uploadWhole } from "../helpers/send-upload";
import { sha256Of } from "../helpers/upload-desk";

const desk = clipRoutes();
const kit = WHO.child.athleteId;
const DAY_MS = 86_400_000;
const { clipPoster, putClipPoster, clipVideo, expireClips } = routes;
let clipId = "";

/** Every test begins with a clip of the 12-year-old that the guardian has uploaded and sent. */
beforeEach(async () => {
  clipId = await uploadedBy(WHO.guardian);
  const caller = await desk.academy.as(WHO.guardian);
  await caller.rounds.send({ athleteId: kit, roundId: null, clips: [said(clipId)] });
});

async function uploadedBy(who: string): Promise<string> {
  desk.signIn(who);
  const { response } = await uploadWhole(kit, await makeClip());
  return (await response.json()).clipId;
}

const ask = (method: string, path: string, init: RequestInit = {}) =>
  new Request(`http://academy.test${path}`, { method, ...init });
/** The answer with its body read to the end, as a player would. */
async function read(answering: Promise<Response>) {
  const response = await answering;
  const bytes = new Uint8Array(await response.arrayBuffer());
  const json = () => JSON.parse(new TextDecoder().decode(bytes));
  return { status: response.status, headers: response.headers, bytes, json };
}
const watch = (headers: Record<string, string> = {}, method = "GET", id = clipId) =>
  read(clipVideo(ask(method, `/api/clips/${id}/video`, { headers }), id));
const picture = (method = "GET") => read(clipPoster(ask(method, `/api/clips/${clipId}/poster`), clipId));
const putPicture = (body: Uint8Array, headers: Record<string, string> = {}) =>
  putClipPoster(ask("PUT", `/api/clips/${clipId}/poster`, { body: Buffer.from(body), headers }), clipId);
const jpeg = () => createCanvas(32, 18).toBuffer("image/jpeg");

describe("the film of a clip", () => {
  it("goes whole and in ranges to the family, its coach, other coaches and admins, and never into a cache", async () => {
    const [row] = await allClips(desk.academy);
    for (const who of [WHO.guardian, WHO.coach, WHO.otherCoach, WHO.admin]) {
      desk.signIn(who);
      const whole = await watch();
      expect([whole.status, whole.bytes.byteLength, sha256Of(whole.bytes)]).toEqual([
        200,
        row?.byteCount,
        row?.sha256,
      ]);
      expect(whole.headers.get("cache-control")).toBe("private, no-store");
      expect(whole.headers.get("content-security-policy")).toBe("sandbox; default-src 'none'");
      const part = await watch({ range: "bytes=10-19" });
      expect(part.status).toBe(206);
      expect(part.bytes).toEqual(whole.bytes.subarray(10, 20));
      expect((await watch({}, "HEAD")).headers.get("content-length")).toBe(String(row?.byteCount));
    }
  });

  it("is not there for another family or for nobody, like one that does not exist", async () => {
    desk.signIn(WHO.otherGuardian);
    const foreign = await watch();
    const unknown = await watch({}, "GET", "clp_nothing");
    expect([foreign.status, foreign.bytes]).toEqual([unknown.status, unknown.bytes]);
    expect(foreign.status).toBe(404);
    desk.signIn("");
    expect((await watch()).status).toBe(401);
  });

  it("is closed to everybody once consent is withdrawn", async () => {
    const withdrawn = { id: "con_x", athleteId: kit, personId: WHO.guardian, kind: "withdrawn" } as const;
    const text = { purpose: "video", textVersion: "video-1", atMs: desk.academy.clock.ms } as const;
    await desk.academy.db.insert(consent).values({ ...withdrawn, ...text });
    for (const who of [WHO.guardian, WHO.coach, WHO.admin]) {
      desk.signIn(who);
      expect((await watch()).status).toBe(412);
      expect((await picture()).status).toBe(412);
    }
  });

  it("that was not sent yet is there for its sender alone", async () => {
    const waiting = await uploadedBy(WHO.guardian);
    expect((await watch({}, "GET", waiting)).status).toBe(200);
    desk.signIn(WHO.coach);
    expect((await watch({}, "GET", waiting)).status).toBe(404);
  });

  it("notes once a viewing that staff opened it who neither coach the athlete nor have the round", async () => {
    const opened = async () => (await desk.academy.db.select().from(clipView)).map((view) => view.personId);
    for (const who of [WHO.guardian, WHO.coach]) {
      desk.signIn(who);
      await watch();
    }
    desk.signIn(WHO.otherCoach);
    await watch({}, "HEAD");
    expect(await opened()).toEqual([]);
    await watch({ range: "bytes=0-" });
    await watch({ range: "bytes=100-" });
    expect(await opened()).toEqual([WHO.otherCoach]);
    desk.academy.clock.ms += 600_000;
    await watch();
    expect(await opened()).toEqual([WHO.otherCoach, WHO.otherCoach]);
    desk.signIn(WHO.admin);
    await watch();
    expect((await opened()).at(-1)).toBe(WHO.admin);
    const [row] = await allClips(desk.academy);
    await (await desk.academy.as(WHO.otherCoach)).rounds.take({ roundId: row?.roundId ?? "" });
    desk.academy.clock.ms += 600_000;
    desk.signIn(WHO.otherCoach);
    await watch();
    expect(await opened()).toHaveLength(3);
  });
});

describe("the still picture of a clip", () => {
  it("comes from the sender or a coach, the first one stays, and it is served to those who may watch", async () => {
    desk.signIn(WHO.guardian);
    expect((await picture()).status).toBe(404);
    expect((await putPicture(jpeg())).status).toBe(204);
    desk.signIn(WHO.coach);
    const second = await putPicture(jpeg());
    expect([second.status, (await second.json()).sentence]).toEqual([
      409,
      "This clip has its still picture already. Nothing was changed.",
    ]);
    const served = await picture();
    expect([served.status, served.headers.get("content-type")]).toEqual([200, "image/jpeg"]);
    expect(served.bytes.subarray(0, 2)).toEqual(new Uint8Array([0xff, 0xd8]));
    expect((await picture("HEAD")).status).toBe(200);
    desk.signIn(WHO.otherGuardian);
    expect((await picture()).status).toBe(404);
    expect(desk.files("clips")).toEqual(["copy", "poster"]);
  });

  it("leaves nothing behind when it could not be put in its place", async () => {
    const [row] = await allClips(desk.academy);
    const path = clipPath(join(desk.dataFolder, "clips"), row?.storageName ?? "", "poster");
    mkdirSync(path);
    desk.signIn(WHO.guardian);
    expect((await putPicture(jpeg())).status).toBe(500);
    expect(desk.files("clips")).toEqual(["copy"]);
    expect((await allClips(desk.academy))[0]?.hasPoster).toBe(false);
  });

  it("is refused when it is no JPEG or too large, from other families, from admins, and from another site", async () => {
    desk.signIn(WHO.guardian);
    expect((await putPicture(new Uint8Array(100))).status).toBe(422);
    expect((await putPicture(new Uint8Array(400_000))).status).toBe(422);
    expect((await putPicture(jpeg(), { "sec-fetch-site": "cross-site" })).status).toBe(403);
    for (const who of [WHO.otherGuardian, WHO.admin]) {
      desk.signIn(who);
      expect((await putPicture(jpeg())).status).toBe(404);
    }
    desk.signIn("");
    expect((await putPicture(jpeg())).status).toBe(401);
    expect(desk.files("clips")).toEqual(["copy"]);
    expect((await desk.academy.db.select().from(clip))[0]?.hasPoster).toBe(false);
  });
});

describe("the clean-up of clips", () => {
  it("deletes a film after its last day, keeps the record, and says so from then on", async () => {
    const run = () => expireClips(desk.academy.connections, desk.academy.clock.ms);
    desk.academy.clock.ms += 180 * DAY_MS;
    await run();
    expect(desk.files("clips")).toEqual(["copy"]);
    desk.academy.clock.ms += DAY_MS;
    await run();
    expect(desk.files("clips")).toEqual([]);
    expect(await allClips(desk.academy)).toMatchObject([
      { state: "expired", storageName: null, frameCount: 30 },
    ]);
    desk.signIn(WHO.guardian);
    const gone = await watch();
    expect([gone.status, gone.json().problem]).toEqual([404, "clip_not_kept"]);
  });

  it("leaves no trace of what was uploaded and never sent, or half sent, a day later; films that no record knows go too", async () => {
    await uploadedBy(WHO.guardian);
    await beginUpload(kit, 1000);
    await makeClipFolder(`${desk.dataFolder}/clips`, "e".repeat(32));
    await expireClips(desk.academy.connections, Math.min(desk.academy.clock.ms, Date.now()) - 1000);
    expect(await allClips(desk.academy)).toHaveLength(2);
    desk.academy.clock.ms += DAY_MS;
    await expireClips(desk.academy.connections, Math.max(desk.academy.clock.ms, Date.now() + 2 * DAY_MS));
    expect(await allClips(desk.academy)).toMatchObject([{ id: clipId, state: "ready" }]);
    expect([desk.files("clips"), desk.files("uploads")]).toEqual([["copy"], []]);
    expect(clipPath(`${desk.dataFolder}/clips`, "e".repeat(32), "copy")).toContain("e".repeat(32));
  });
});
