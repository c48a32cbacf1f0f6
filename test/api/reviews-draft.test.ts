import { beforeEach, describe, expect, it } from "vitest";
import { draft as draftTable } from "@/db/schema/rounds";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { refused, save, sendReview, takenRound } from "../helpers/review-desk";
import { check, correction, many, review } from "../helpers/review-drafts";

let academy: TestAcademy;
let roundId: string;
let clipId: string;

beforeEach(async () => {
  academy = await makeAcademy();
  ({ roundId, clipId } = await takenRound(academy));
});

const coach = () => academy.as(WHO.coach);
const onClip = (changes: Parameters<typeof correction>[0] = {}) => correction({ clipId, ...changes });

describe("a draft", () => {
  const document = () => review({ corrections: [onClip({ cue: "Hip fir" })] });

  it("comes back after a closed tab as it was left, with its version and time", async () => {
    const version = await save(academy, roundId, { kind: "review", document: document() });
    const room = await (await coach()).reviews.room({ roundId });
    expect(room.reviewDraft).toEqual({
      document: document(),
      version,
      coachName: "Cole Rivers",
      savedAtMs: academy.clock.ms,
    });
    expect(room.isMine).toBe(true);
  });

  it("is saved over the version it was read at, and only then", async () => {
    const first = await save(academy, roundId, { kind: "review", document: document() });
    const second = await save(academy, roundId, { kind: "review", document: review() }, first);
    expect(second).toBe(first + 1);
    for (const stale of [0, first, second + 1]) {
      const why = await refused(academy, () =>
        save(academy, roundId, { kind: "review", document: document() }, stale),
      );
      expect(why).toEqual({ reason: "changed_meanwhile" });
    }
  });

  it("keeps when it was opened, however often it is saved", async () => {
    const opened = academy.clock.ms;
    const first = await save(academy, roundId, { kind: "review", document: document() });
    academy.clock.ms += 600_000;
    await save(academy, roundId, { kind: "review", document: document() }, first);
    const [row] = await academy.db.select().from(draftTable);
    expect(row).toMatchObject({ openedAtMs: opened, savedAtMs: opened + 600_000 });
  });

  it("is written by the coach who has the round alone; others are told who that is", async () => {
    const why = await refused(academy, () =>
      save(academy, roundId, { kind: "review", document: document() }, 0, WHO.otherCoach),
    );
    expect(why).toEqual({ reason: "round_taken_by", coachName: "Cole Rivers" });
    expect((await (await academy.as(WHO.otherCoach)).reviews.room({ roundId })).isMine).toBe(false);
  });

  it("is not written on a round in another state", async () => {
    const why = await refused(academy, () => save(academy, roundId, { kind: "check", document: check() }));
    expect(why).toEqual({ reason: "round_state", action: "checked", state: "taken" });
    await sendReview(academy, roundId, review({ corrections: [onClip()] }));
    const late = await refused(academy, () => save(academy, roundId, { kind: "review", document: review() }));
    expect(late).toEqual({ reason: "round_state", action: "reviewed", state: "sent" });
  });

  it("is never shown to the family", async () => {
    await save(academy, roundId, {
      kind: "review",
      document: review({ corrections: [onClip({ cue: "a secret cue" })] }),
    });
    const read = await (await academy.as(WHO.guardian)).reviews.read({ roundId });
    expect(JSON.stringify(read)).not.toContain("a secret cue");
    await refused(academy, async () => (await academy.as(WHO.guardian)).reviews.room({ roundId }));
  });

  it("is refused with the field named when it is no draft", async () => {
    const caller = await coach();
    const bad = review({ corrections: many(11, (index) => onClip({ id: `c${index}` })) });
    const why = await refused(academy, () =>
      caller.reviews.saveDraft({ kind: "review", roundId, version: 0, document: bad }),
    );
    expect(why).toBe("BAD_REQUEST");
  });
});

describe("a draft from before measures, marks and spoken notes", () => {
  it("is read as one that has none of them", async () => {
    const document = review({ corrections: [onClip()] });
    await save(academy, roundId, { kind: "review", document });
    const { measures, marks, shownAgain, ...before } = document;
    const { voiceId: _later, ...old } = onClip();
    academy.sqlite
      .prepare("UPDATE draft SET document = ? WHERE round_id = ?")
      .run(JSON.stringify({ ...before, corrections: [old] }), roundId);
    const room = await (await academy.as(WHO.coach)).reviews.room({ roundId });
    expect([measures, marks, shownAgain]).toEqual([[], [], []]);
    expect(room.reviewDraft?.document).toEqual(document);
  });
});
