import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addClip, answer, refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { correction, review } from "../helpers/review-drafts";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

/** Three rounds of the child, a day apart, the last one with a reply. */
async function season() {
  const clips: string[] = [];
  for (const id of ["rnd_1", "rnd_2", "rnd_3"]) {
    clips.push((await takenRound(academy, id)).clipId);
    academy.clock.ms += 86_400_000;
  }
  return clips as [string, string, string];
}

async function compare(roundId: string, clipId: string | null = null, withClipId: string | null = null) {
  const caller = await academy.as(WHO.coach);
  return caller.reviews.compare({ roundId, clipId, withClipId });
}

describe("old and new", () => {
  it("takes the last clip of the round and the latest of its view before it, and any earlier one that is named", async () => {
    const [first, second, third] = await season();
    const usual = await compare("rnd_3");
    expect([usual.newer?.id, usual.older?.id]).toEqual([third, second]);
    expect(usual.earlier.map((each) => each.id)).toEqual([second, first]);
    expect((await compare("rnd_3", null, first)).older?.id).toBe(first);
    expect((await compare("rnd_1")).older).toBeNull();
  });

  it("sets a reply beside the clip it answers", async () => {
    const [, , third] = await season();
    const { id } = (await academy.db.select().from(clip).where(eq(clip.id, third)))[0] ?? { id: "" };
    const reply = await answer(academy, "rnd_3");
    const both = await compare("rnd_3");
    expect([both.newer?.id, both.older?.id]).toEqual([reply, id]);
  });

  it("compares one view with that view alone, and with nobody else's clip", async () => {
    const [first] = await season();
    const front = await addClip(academy, "rnd_3", "first", WHO.child.athleteId, "front");
    const stranger = await takenRound(academy, "rnd_9", WHO.stranger.athleteId);
    const view = await compare("rnd_3", front);
    expect([view.newer?.id, view.older]).toEqual([front, null]);
    const named = await compare("rnd_2", null, stranger.clipId);
    expect(named.older?.id).toBe(first);
  });

  it("leaves out a clip whose film is gone", async () => {
    const [first, second] = await season();
    await academy.db.update(clip).set({ state: "expired" }).where(eq(clip.id, second));
    expect((await compare("rnd_3")).earlier.map((each) => each.id)).toEqual([first]);
  });

  it("knows the moments that were sent and over them those being written, and what is open", async () => {
    const [first, second] = await season();
    const seen = correction({ clipId: first });
    await sendReview(
      academy,
      "rnd_1",
      review({
        eventMarks: [{ clipId: first, event: "ball_release", frame: 90 }],
        corrections: [seen],
      }),
    );
    const document = review({
      eventMarks: [{ clipId: second, event: "ball_release", frame: 101 }],
      corrections: [],
    });
    await save(academy, "rnd_2", { kind: "review", document });
    const both = await compare("rnd_2");
    expect(both.eventMarks).toEqual([
      { clipId: first, event: "ball_release", frame: 90 },
      { clipId: second, event: "ball_release", frame: 101 },
    ]);
    expect(both.corrections.map((each) => each.cue)).toEqual([seen.cue]);
  });

  it("is for staff: a family is turned away", async () => {
    await season();
    const caller = await academy.as(WHO.guardian);
    const why = await refused(academy, () =>
      caller.reviews.compare({ roundId: "rnd_3", clipId: null, withClipId: null }),
    );
    expect(why).toEqual({ reason: "not_found" });
  });
});
