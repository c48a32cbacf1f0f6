import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { consent } from "@/db/schema/people";
import { MAX_CLIP_BYTES } from "@/server/domain/clips/probe";
import { MAX_WAITING_CLIPS } from "@/server/domain/clips/send-clip";
import { WHO } from "../helpers/academy";
import { clipRoutes } from "../helpers/clip-routes";
import { addWaitingClip, allClips, said } from "../helpers/clips";
import { evenTimesMs, makeClip } from "../helpers/make-clip";
import { askOffset, beginUpload, giveUp, sendPiece, uploadWhole } from "../helpers/send-upload";

const desk = clipRoutes();
const kit = WHO.child.athleteId;
beforeEach(() => desk.signIn(WHO.guardian));

const withdraw = () =>
  desk.academy.db.insert(consent).values({
    id: "con_x",
    athleteId: kit,
    personId: WHO.guardian,
    purpose: "video",
    kind: "withdrawn",
    textVersion: "video-1",
    atMs: desk.academy.clock.ms,
  });

describe("uploading a clip", () => {
  it("keeps the bare copy alone as a clip that waits for its sender, and it can be sent with a round", async () => {
    const { response, path } = await uploadWhole(kit, await makeClip({ rotationDeg: 90 }));
    expect(response.status).toBe(201);
    const { clipId } = await response.json();
    const [row] = await allClips(desk.academy);
    expect(row).toMatchObject({
      id: clipId,
      athleteId: kit,
      state: "waiting",
      uploadedByPersonId: WHO.guardian,
      uploadId: path.split("/").at(-1),
      contentType: "video/mp4",
      frameCount: 30,
      widthPx: 64,
      heightPx: 96,
      rotationDeg: 90,
      retainUntil: "2027-05-24",
    });
    expect(desk.files("clips")).toEqual(["copy"]);
    expect(desk.files("uploads")).toEqual([`${path.split("/").at(-1)}.taken`]);
    const caller = await desk.academy.as(WHO.guardian);
    expect(await caller.clips.waiting({ athleteId: kit })).toMatchObject([{ clipId, hasPoster: false }]);
    await caller.rounds.send({ athleteId: kit, roundId: null, clips: [said(clipId)] });
    expect((await allClips(desk.academy))[0]?.state).toBe("ready");
  });

  it("that was cut anywhere and resumed gives the same copy as one that was not, by hash", async () => {
    const bytes = await makeClip();
    await uploadWhole(kit, bytes);
    const begun = await beginUpload(kit, bytes.byteLength);
    const path = begun.headers.get("location") ?? "";
    for (const cut of [0.1, 0.35, 0.351, 0.9, 1]) {
      const asked = await askOffset(path);
      const offset = Number(asked.headers.get("upload-offset"));
      await sendPiece(path, offset, bytes.subarray(offset, Math.floor(bytes.byteLength * cut)));
    }
    const rows = await allClips(desk.academy);
    expect(rows).toHaveLength(2);
    expect(rows[1]?.sha256).toBe(rows[0]?.sha256);
    expect(rows[0]?.sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  it("answers a sender who comes back to the last byte as before, and keeps one clip", async () => {
    const bytes = await makeClip();
    const { path, response } = await uploadWhole(kit, bytes);
    const again = await sendPiece(path, bytes.byteLength, new Uint8Array());
    expect(await again.json()).toEqual(await response.json());
    expect(await allClips(desk.academy)).toHaveLength(1);
  });
});

describe("an upload is refused, and nothing is kept,", () => {
  const refused = async (bytes: Uint8Array, status: number, problem: string) => {
    const { response } = await uploadWhole(kit, bytes);
    expect(response.status).toBe(status);
    const body = await response.json();
    expect(body.problem).toBe(problem);
    expect(body.sentence).toMatch(/Nothing was kept/);
    expect([desk.files("clips"), desk.files("uploads"), await allClips(desk.academy)]).toEqual([[], [], []]);
  };

  it("when it is no video, when it is cut off, and when it is longer than three minutes", async () => {
    await refused(new TextEncoder().encode("<html>not a video</html>".repeat(40)), 422, "not_video");
    const whole = await makeClip({ index: "end" });
    await refused(whole.subarray(0, Math.floor(whole.byteLength / 2)), 422, "cut_off");
    await refused(await makeClip({ frameTimesMs: evenTimesMs(40, 5000) }), 422, "too_long");
  });

  it("before a byte is sent when it is larger than a gigabyte, or empty", async () => {
    const tooBig = await beginUpload(kit, MAX_CLIP_BYTES + 1);
    expect([tooBig.status, (await tooBig.json()).problem]).toEqual([413, "too_big"]);
    const empty = await beginUpload(kit, 0);
    expect([empty.status, (await empty.json()).problem]).toEqual([422, "empty"]);
    expect(desk.files("uploads")).toEqual([]);
  });

  it("for whoever may not send clips of the athlete, exactly like for an athlete who does not exist", async () => {
    const answers = [];
    for (const [who, athleteId] of [
      [WHO.otherGuardian, kit],
      [WHO.coach, kit],
      [WHO.admin, kit],
      [WHO.guardian, WHO.stranger.athleteId],
      [WHO.guardian, "ath_nobody"],
    ] as const) {
      desk.signIn(who);
      const response = await beginUpload(athleteId, 1000);
      answers.push([response.status, await response.text()]);
    }
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers[0]?.[0]).toBe(404);
    desk.signIn("");
    expect((await beginUpload(kit, 1000)).status).toBe(401);
    expect(desk.files("uploads")).toEqual([]);
  });

  it("from another site, whoever is signed in", async () => {
    expect((await beginUpload(kit, 1000, { "sec-fetch-site": "cross-site" })).status).toBe(403);
  });

  it("without consent, from the first byte and from the moment it is withdrawn", async () => {
    const bytes = await makeClip();
    const begun = await beginUpload(kit, bytes.byteLength);
    const path = begun.headers.get("location") ?? "";
    await sendPiece(path, 0, bytes.subarray(0, 1000));
    await withdraw();
    const late = await sendPiece(path, 1000, bytes.subarray(1000));
    expect([late.status, (await late.json()).problem]).toEqual([412, "consent_missing"]);
    const fresh = await beginUpload(kit, 1000);
    expect((await fresh.json()).sentence).toContain("no live consent to video of Kit");
    expect(await allClips(desk.academy)).toEqual([]);
  });

  it("once a dozen clips of the athlete wait to be sent", async () => {
    for (let count = 0; count < MAX_WAITING_CLIPS; count += 1)
      await addWaitingClip(desk.academy, kit, WHO.guardian);
    const response = await beginUpload(kit, 1000);
    expect([response.status, (await response.json()).problem]).toEqual([409, "too_many_waiting"]);
  });
});

describe("an upload under way", () => {
  it("is not there for anybody but its sender, not even for the same athlete's other family", async () => {
    const begun = await beginUpload(WHO.teen.athleteId, 1000);
    const path = begun.headers.get("location") ?? "";
    for (const who of [WHO.teen.personId, WHO.otherGuardian, WHO.coach]) {
      desk.signIn(who);
      expect((await askOffset(path)).status).toBe(404);
      const piece = await sendPiece(path, 0, new Uint8Array(10));
      const unknown = await sendPiece(`/api/uploads/${"0".repeat(64)}`, 0, new Uint8Array(10));
      expect([piece.status, await piece.text()]).toEqual([unknown.status, await unknown.text()]);
    }
    desk.signIn(WHO.guardian);
    expect((await askOffset(path)).headers.get("upload-offset")).toBe("0");
    expect((await giveUp(path)).status).toBe(204);
    expect(desk.files("uploads")).toEqual([]);
  });
});

describe("taking back a clip that was not sent", () => {
  it("is for its sender alone, and only while it waits", async () => {
    const clipId = await addWaitingClip(desk.academy, WHO.teen.athleteId, WHO.guardian);
    for (const who of [WHO.teen.personId, WHO.coach, WHO.otherGuardian]) {
      const before = desk.academy.snapshot();
      const call = (await desk.academy.as(who)).clips.discard({ clipId });
      await expect(call).rejects.toMatchObject({ code: "NOT_FOUND" });
      expect(desk.academy.snapshot()).toBe(before);
    }
    const caller = await desk.academy.as(WHO.guardian);
    await caller.clips.discard({ clipId });
    expect(await caller.clips.waiting({ athleteId: WHO.teen.athleteId })).toEqual([]);
    await expect(caller.clips.discard({ clipId })).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect((await desk.academy.db.select().from(clip))[0]?.state).toBe("expired");
  });
});
