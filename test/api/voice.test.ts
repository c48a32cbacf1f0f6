import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { voiceNote } from "@/db/schema/reviews";
import { MAX_VOICE_BYTES, MAX_WAITING_VOICES } from "@/server/domain/reviews/voice-note";
import { WHO } from "../helpers/academy";
import { clipRoutes } from "../helpers/clip-routes";
import { makeClip } from "../helpers/make-clip";
import { makeVoice } from "../helpers/make-voice";
import { refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { correction, keep, review } from "../helpers/review-drafts";
import { hear, speak, spokenOn } from "../helpers/voice-desk";

const desk = clipRoutes();
let roundId = "";
let clipId = "";

beforeEach(async () => {
  ({ roundId, clipId } = await takenRound(desk.academy));
  desk.signIn(WHO.coach);
});

const spoken = () => spokenOn(roundId);
const notes = () => desk.academy.db.select().from(voiceNote);
const stateOf = async (id: string) => (await notes()).find((note) => note.id === id)?.state ?? null;
const onClip = (changes: Parameters<typeof correction>[0] = {}) => correction({ clipId, ...changes });

describe("a note that is spoken on a round", () => {
  it("is kept once, under a random name, with its length, and no byte of it is the recorder's own file", async () => {
    const answer = await speak(roundId, await makeVoice({ lengthMs: 3000 }));
    expect(answer.status).toBe(201);
    expect(Math.abs(answer.json().durationMs - 3000)).toBeLessThanOrEqual(25);
    const [note] = await notes();
    expect(note).toMatchObject({
      ...{ id: answer.json().voiceId, roundId, athleteId: WHO.child.athleteId, coachPersonId: WHO.coach },
      ...{ state: "waiting", contentType: "audio/webm" },
    });
    expect(note?.storageName).toMatch(/^[0-9a-f]{32}$/);
    expect(desk.files("clips")).toEqual(["voice"]);
  });

  it("is heard by the coach who spoke it alone, until it is sent", async () => {
    const id = await spoken();
    expect((await hear(id)).status).toBe(200);
    for (const who of [WHO.otherCoach, WHO.admin, WHO.guardian, WHO.otherGuardian]) {
      desk.signIn(who);
      expect((await hear(id)).status, who).toBe(404);
    }
    desk.signIn("");
    expect((await hear(id)).status).toBe(401);
  });

  it("is taken from nobody but the coach who has the round, and nothing is written", async () => {
    const recorded = await makeVoice();
    for (const [who, status] of [
      [WHO.otherCoach, 409],
      [WHO.admin, 404],
      [WHO.guardian, 404],
      [WHO.otherGuardian, 404],
      ["", 401],
    ] as const) {
      desk.signIn(who);
      expect((await speak(roundId, recorded)).status, who || "nobody").toBe(status);
    }
    desk.signIn(WHO.coach);
    expect((await speak("rnd_nothing", recorded)).status).toBe(404);
    expect((await speak(roundId, recorded, { "sec-fetch-site": "cross-site" })).status).toBe(403);
    expect(await notes()).toEqual([]);
    expect(desk.files("clips")).toEqual([]);
  });

  it("is taken only while the review is being written", async () => {
    await sendReview(desk.academy, roundId, review({ corrections: [onClip()] }));
    const answer = await speak(roundId, await makeVoice());
    expect(answer.status).toBe(409);
    expect(answer.json().problem).toBe("round_state");
    expect(await notes()).toEqual([]);
  });

  it.each([
    ["a page", async () => Buffer.from("<script>alert(1)</script>"), 422],
    ["a film", () => makeClip({ hasSound: true }), 422],
    ["nothing", async () => new Uint8Array(), 422],
    ["more than a minute", () => makeVoice({ lengthMs: 62_500 }), 422],
    ["more bytes than a minute has", async () => new Uint8Array(MAX_VOICE_BYTES + 1), 413],
  ])("that is %s is refused in words, and nothing is kept", async (_, make, status) => {
    const answer = await speak(roundId, await make());
    expect(answer.status).toBe(status);
    expect(answer.json().sentence).toMatch(/again/);
    expect(await notes()).toEqual([]);
    expect(desk.files("clips")).toEqual([]);
  });

  it("is one of a bounded number that wait", async () => {
    const [first] = [await spoken()];
    const [row] = await notes();
    if (!row) throw new Error("There is no note.");
    const copies = Array.from({ length: MAX_WAITING_VOICES - 1 }, (_, at) => ({ ...row, id: `voi_${at}` }));
    await desk.academy.db.insert(voiceNote).values(copies);
    const answer = await speak(roundId, await makeVoice());
    expect(answer.status).toBe(409);
    expect(await notes()).toHaveLength(MAX_WAITING_VOICES);
    expect(await stateOf(first ?? "")).toBe("waiting");
  });
});

describe("a review that is sent with spoken notes", () => {
  it("lets the family and all staff hear those it names, whole and in ranges and never into a cache; the others are gone", async () => {
    const [onCorrection, onKeep, leftOut] = [await spoken(), await spoken(), await spoken()];
    const document = review({
      corrections: [onClip({ voiceId: onCorrection })],
      keeps: [keep({ voiceId: onKeep })],
    });
    await sendReview(desk.academy, roundId, document);
    expect([await stateOf(onCorrection), await stateOf(onKeep), await stateOf(leftOut)]).toEqual([
      ...["sent", "sent"],
      "gone",
    ]);
    for (const who of [WHO.guardian, WHO.coach, WHO.otherCoach, WHO.admin]) {
      desk.signIn(who);
      const whole = await hear(onCorrection);
      expect(whole.status, who).toBe(200);
      expect(whole.headers.get("content-type")).toBe("audio/webm");
      expect(whole.headers.get("cache-control")).toBe("private, no-store");
      expect(whole.headers.get("content-security-policy")).toBe("sandbox; default-src 'none'");
      const part = await hear(onCorrection, { range: "bytes=4-9" });
      expect([part.status, part.bytes]).toEqual([206, whole.bytes.subarray(4, 10)]);
      expect((await hear(leftOut)).status).toBe(404);
    }
    desk.signIn(WHO.otherGuardian);
    const [foreign, unknown] = [await hear(onCorrection), await hear("voi_nothing")];
    expect([foreign.status, foreign.bytes]).toEqual([404, unknown.bytes]);
  });

  it("names them to the family, correction by correction", async () => {
    const id = await spoken();
    await sendReview(desk.academy, roundId, review({ corrections: [onClip({ voiceId: id })] }));
    const reading = await (await desk.academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(reading.corrections.map((each) => each.voiceId)).toEqual([id]);
    expect(reading.voicesToHear).toEqual([id]);
  });

  it.each([
    ["that is not there", async () => "voi_nothing"],
    ["that another coach spoke", async () => changed({ coachPersonId: WHO.otherCoach })],
    ["that was sent before", async () => changed({ state: "sent" })],
    ["that is gone", async () => changed({ state: "gone" })],
    ["of another round", () => ofAnotherRound()],
  ])("is refused with one %s, and nothing is written", async (_, named) => {
    const voiceId = await named();
    const document = review({ corrections: [onClip({ voiceId })] });
    const version = await save(desk.academy, roundId, { kind: "review", document });
    const coach = await desk.academy.as(WHO.coach);
    expect(await refused(desk.academy, () => coach.reviews.send({ roundId, version }))).toMatchObject({
      reason: "draft_incomplete",
      missing: [expect.stringContaining("the note on correction 1")],
    });
  });

  async function changed(changes: Partial<typeof voiceNote.$inferSelect>): Promise<string> {
    const id = await spoken();
    await desk.academy.db.update(voiceNote).set(changes).where(eq(voiceNote.id, id));
    return id;
  }

  async function ofAnotherRound(): Promise<string> {
    const other = await takenRound(desk.academy, "rnd_2");
    return spokenOn(other.roundId);
  }
});
