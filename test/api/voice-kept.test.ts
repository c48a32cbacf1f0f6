import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { correction as correctionTable } from "@/db/schema/corrections";
import { voiceNote } from "@/db/schema/reviews";
import { round } from "@/db/schema/rounds";
import { WHO } from "../helpers/academy";
import { clipRoutes, routes } from "../helpers/clip-routes";
import { save, sendReview, takenRound } from "../helpers/review-desk";
import { correction, keep, review } from "../helpers/review-drafts";
import { hear, spokenOn } from "../helpers/voice-desk";

const desk = clipRoutes();
const DAY_MS = 86_400_000;
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

describe("what is kept of a spoken note, and until when", () => {
  const clean = () => routes.expireClips(desk.academy.connections, desk.academy.clock.ms);
  const later = (ms: number) => {
    desk.academy.clock.ms += ms;
  };

  it("goes with the film that it was spoken on, and the page says so", async () => {
    const id = await spoken();
    await sendReview(desk.academy, roundId, review({ corrections: [onClip({ voiceId: id })] }));
    await clean();
    expect(await stateOf(id)).toBe("sent");
    await desk.academy.db.update(clip).set({ state: "expired" }).where(eq(clip.id, clipId));
    await clean();
    await clean();
    expect(await stateOf(id)).toBe("gone");
    expect(desk.files("clips")).toEqual([]);
    desk.signIn(WHO.guardian);
    expect((await hear(id)).status).toBe(404);
    const reading = await (await desk.academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(reading.corrections.map((each) => each.voiceId)).toEqual([id]);
    expect(reading.voicesToHear).toEqual([]);
  });

  it("goes with the last film of its round when it is on no frame, and when nothing names it any more", async () => {
    const [onKeep, onCorrection] = [await spoken(), await spoken()];
    const document = review({
      keeps: [keep({ voiceId: onKeep })],
      corrections: [onClip({ voiceId: onCorrection })],
    });
    await sendReview(desk.academy, roundId, document);
    await desk.academy.db.update(correctionTable).set({ voiceId: null });
    await clean();
    expect([await stateOf(onKeep), await stateOf(onCorrection)]).toEqual(["sent", null]);
    await desk.academy.db.update(clip).set({ state: "expired" }).where(eq(clip.id, clipId));
    await clean();
    expect(await stateOf(onKeep)).toBe("gone");
    expect(desk.files("clips")).toEqual([]);
  });

  it("stays with a draft for as long as the draft names it, and goes after a day when it is left out", async () => {
    const [named, leftOut] = [await spoken(), await spoken()];
    const document = review({ corrections: [onClip({ voiceId: named })] });
    await save(desk.academy, roundId, { kind: "review", document });
    later(DAY_MS - 1);
    await clean();
    expect([await stateOf(named), await stateOf(leftOut)]).toEqual(["waiting", "waiting"]);
    later(1);
    await clean();
    expect([await stateOf(named), await stateOf(leftOut)]).toEqual(["waiting", null]);
    expect(desk.files("clips")).toEqual(["voice"]);
    await desk.academy.db.update(round).set({ state: "withdrawn" }).where(eq(round.id, roundId));
    await clean();
    expect(await notes()).toEqual([]);
    expect(desk.files("clips")).toEqual([]);
  });
});
