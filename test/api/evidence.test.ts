import { beforeEach, describe, expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { judgement } from "@/db/schema/mechanics";
import { addDays } from "@/server/domain/time/calendar-day";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { THREE_SECONDS } from "../helpers/clips";
import { refused, sendReview, takenRound } from "../helpers/review-desk";
import { correction, keep, review } from "../helpers/review-drafts";

/** The day on which the correction is given. */
const TODAY = "2026-11-25";
const CHECKPOINT = "hips-lead";

let academy: TestAcademy;
let given: Awaited<ReturnType<typeof takenRound>>;

beforeEach(async () => {
  academy = await makeAcademy();
  given = await takenRound(academy);
});

/** Clips of one day, each judged once at the checkpoint; kept unless their film is gone. */
async function judgedDay(day: string, scores: readonly number[], state: "ready" | "expired" = "ready") {
  const { db, clock } = academy;
  for (const [at, score] of scores.entries()) {
    const clipId = `clp_${day}_${at}`;
    await db.insert(clip).values({
      ...{ id: clipId, athleteId: WHO.child.athleteId, roundId: given.roundId, part: "first", state },
      ...{
        view: "open_side",
        pitchesThrown: 1,
        alreadyOnLog: true,
        filmedOn: day,
        retainUntil: "2027-05-25",
      },
      ...{ createdAtMs: clock.ms, position: at + 1, ...THREE_SECONDS },
    });
    await db.insert(judgement).values({
      ...{
        id: `jdg_${day}_${at}`,
        athleteId: WHO.child.athleteId,
        checkpointId: CHECKPOINT,
        clipId,
        frame: 80,
      },
      ...{ view: "open_side", score, coachPersonId: WHO.coach, judgedOn: TODAY, atMs: clock.ms },
    });
  }
}

async function giveCorrection() {
  const corrections = [correction({ clipId: given.clipId })];
  await sendReview(academy, given.roundId, review({ keeps: [keep()], corrections }));
}

const asked = async (personId: string = WHO.coach, checkpointId = CHECKPOINT) =>
  (await academy.as(personId)).evidence.checkpoint({ athleteId: WHO.child.athleteId, checkpointId });

describe("the evidence of a checkpoint", () => {
  it("says how many days are missing, of a checkpoint that was given and never judged since", async () => {
    await judgedDay(TODAY, [0]);
    await giveCorrection();
    const { corrections, series, manyWords } = await asked();
    expect(corrections).toMatchObject([{ cue: "Hip first", state: "given", givenOn: TODAY }]);
    expect(series).toMatchObject([
      {
        ...{ kind: "judgement", view: "open_side", plusMinus: null, wantedWords: "Better is more." },
        days: [{ day: TODAY, value: 0, words: "absent (0)", deliveries: 1 }],
        errorWords: expect.stringContaining("not yet known: 0 of 15 repeats"),
        since: [
          { words: ["Too few observations (1 of at least 3).", "Days before the correction are too few."] },
        ],
        frames: [{ which: "latest", day: TODAY, frame: 80 }],
      },
    ]);
    expect(manyWords).toEqual([
      "0 checkpoints were looked at together; 0 changed beyond measurement error.",
      "1 checkpoint was left out, with too few observations.",
    ]);
  });

  it("tells an improvement by the days on which clips were filmed, whenever they were judged", async () => {
    for (const back of [30, 20, 10]) await judgedDay(addDays(TODAY, -back), [0, 0, 1]);
    await giveCorrection();
    for (const on of [3, 10, 17, 24]) await judgedDay(addDays(TODAY, on), [2, 3, 3]);
    for (const on of [31, 38]) await judgedDay(addDays(TODAY, on), [3, 3, 3], "expired");
    const { series } = await asked();
    expect(series[0]).toMatchObject({
      /* Six of the nine days hold one value that lies 1 beside two equal ones, a variance of 1/3, 18 degrees in all. */
      plusMinus: 1.96 * Math.sqrt((7 * (1 / 3)) / 9),
      since: [{ words: expect.arrayContaining(["Improved beyond measurement error."]), fellAway: false }],
    });
    expect(series[0]?.days.map(({ value }) => value)).toEqual([0, 0, 0, 3, 3, 3, 3, 3, 3]);
    expect(series[0]?.frames.map(({ which, day }) => [which, day])).toEqual([
      ["first", addDays(TODAY, -30)],
      ["middle", addDays(TODAY, 3)],
      ["latest", addDays(TODAY, 24)],
    ]);
    expect(series[0]?.days.at(-1)?.place).toMatchObject({ roundId: given.roundId, isKept: false });
  });

  it("is open to staff alone, and not there for a checkpoint that the academy has not", async () => {
    await expect(asked(WHO.admin)).resolves.toMatchObject({ series: [], corrections: [] });
    expect(await refused(academy, () => asked(WHO.guardian))).toMatchObject({ reason: "not_found" });
    expect(await refused(academy, () => asked(WHO.coach, "no-such-checkpoint"))).toMatchObject({
      reason: "not_found",
    });
  });
});
