import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import type { FilmedSpeed } from "@/server/domain/clips/capture-rate";
import { durationBetween, timeBaseOf } from "@/server/domain/clips/time-base";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addWaitingClip, said, THREE_SECONDS } from "../helpers/clips";
import { takenRound } from "../helpers/review-desk";
import { turnedAway } from "../helpers/rounds";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});

const kit = WHO.child.athleteId;
const STRETCHED = { frameCount: 90, frameTimesMs: JSON.stringify(timesAt(30, 90)) };

function timesAt(fps: number, frames: number) {
  return Array.from({ length: frames }, (_, at) => (at * 1000) / fps);
}

const rowOf = async (clipId: string) => (await academy.db.select().from(clip).where(eq(clip.id, clipId)))[0];

async function sendAt(filmedSpeed: FilmedSpeed | undefined, film: object) {
  const clipId = await addWaitingClip(academy, kit, WHO.guardian, film);
  const caller = await academy.as(WHO.guardian);
  const clips = [said(clipId)];
  await caller.rounds.send({ athleteId: kit, roundId: null, clips, ...(filmedSpeed ? { filmedSpeed } : {}) });
  return rowOf(clipId);
}

describe("how fast a clip was recorded", () => {
  it.each([
    ["slow_240", STRETCHED, 240, "sender"],
    ["slow_120", STRETCHED, 120, "sender"],
    ["normal", STRETCHED, 30, "sender"],
    ["unknown", STRETCHED, null, null],
    [undefined, STRETCHED, null, null],
    ["normal", { ...STRETCHED, capturedFps: 240 }, 240, "file"],
    ["slow_120", { frameCount: 90, frameTimesMs: JSON.stringify(timesAt(240, 90)) }, null, null],
  ] as const)("said as %s, is kept with who says so", async (speed, film, capturedFps, captureSource) => {
    const row = await sendAt(speed, film);
    expect(row?.captureSource).toBe(captureSource);
    if (capturedFps === null) expect(row?.capturedFps).toBeNull();
    else expect(row?.capturedFps).toBeCloseTo(capturedFps, 6);
  });

  it("is corrected by a coach, whoever said it before, and gives the room true milliseconds", async () => {
    const { roundId, clipId } = await slowClip();
    const caller = await academy.as(WHO.coach);
    await caller.clips.setCapturedRate({ clipId, capturedFps: 240 });
    const [shown] = (await caller.reviews.room({ roundId })).clips;
    expect(shown).toMatchObject({ capturedFps: 240, captureSource: "coach" });
    const frameTimesMs = shown?.frameTimesMs ?? [];
    const base = timeBaseOf({ frameTimesMs, capturedFps: shown?.capturedFps ?? null });
    expect(durationBetween(base, frameTimesMs, 20, 56).ms).toBeCloseTo(150, 3);
  });

  it("is taken back to nobody knows", async () => {
    const { clipId } = await slowClip();
    const caller = await academy.as(WHO.coach);
    await caller.clips.setCapturedRate({ clipId, capturedFps: 240 });
    await caller.clips.setCapturedRate({ clipId, capturedFps: null });
    expect(await rowOf(clipId)).toMatchObject({ capturedFps: null, captureSource: null });
  });

  it("is for coaches to correct, and only of a clip that has been sent; everything stays as it was", async () => {
    const { clipId } = await slowClip();
    const set = async (who: string, id: string) =>
      (await academy.as(who)).clips.setCapturedRate({ clipId: id, capturedFps: 240 });
    await turnedAway(academy, [WHO.guardian, WHO.admin, WHO.otherGuardian], (who) => set(who, clipId));
    const waitingId = await addWaitingClip(academy, kit, WHO.guardian);
    await turnedAway(academy, [WHO.coach], (who) => set(who, waitingId));
  });

  it.each([0, -30, 1001, Number.POSITIVE_INFINITY])("is never %f frames a second", async (capturedFps) => {
    const { clipId } = await slowClip();
    const before = academy.snapshot();
    const caller = await academy.as(WHO.coach);
    await expect(caller.clips.setCapturedRate({ clipId, capturedFps })).rejects.toThrow();
    expect(academy.snapshot()).toBe(before);
  });
});

/** A round in the coach's hands whose clip plays at 30 a second, and nobody has said how it was recorded. */
async function slowClip() {
  const roundId = "rnd_1";
  await takenRound(academy, roundId);
  const [row] = await academy.db.select().from(clip).where(eq(clip.roundId, roundId));
  if (!row) throw new Error("The round has no clip.");
  await academy.db
    .update(clip)
    .set({ ...THREE_SECONDS, ...STRETCHED })
    .where(eq(clip.id, row.id));
  return { roundId, clipId: row.id };
}
