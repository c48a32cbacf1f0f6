import { beforeEach, describe, expect, it } from "vitest";
import { correction as correctionTable, practiceDay } from "@/db/schema/corrections";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { refused, sendReview, takenRound } from "../helpers/review-desk";
import { correction, review } from "../helpers/review-drafts";

const DAY_MS = 86_400_000;

let academy: TestAcademy;
let correctionId: string;

/** A correction given on Wed 25 Nov, looked at on Thu 17 Dec. */
beforeEach(async () => {
  academy = await makeAcademy();
  const { roundId, clipId } = await takenRound(academy);
  await sendReview(academy, roundId, review({ corrections: [correction({ clipId })] }));
  correctionId = (await academy.db.select().from(correctionTable))[0]?.id ?? "";
  academy.clock.ms += 22 * DAY_MS;
});

const days = async () => (await academy.db.select().from(practiceDay)).map((row) => row.practisedOn).sort();

describe("practice days", () => {
  it("are ticked once however often, and unticked again", async () => {
    const guardian = await academy.as(WHO.guardian);
    await guardian.practice.tick({ correctionId, day: "2026-12-17" });
    await guardian.practice.tick({ correctionId, day: "2026-12-17" });
    await guardian.practice.tick({ correctionId, day: "2026-12-04" });
    expect(await days()).toEqual(["2026-12-04", "2026-12-17"]);
    const read = await guardian.reviews.read({ roundId: "rnd_1" });
    expect(read.corrections[0]?.practisedOn).toEqual(["2026-12-04", "2026-12-17"]);
    await guardian.practice.untick({ correctionId, day: "2026-12-17" });
    await guardian.practice.untick({ correctionId, day: "2026-12-17" });
    expect(await days()).toEqual(["2026-12-04"]);
  });

  it.each([
    ["2026-12-18", "That day is still to come."],
    ["2026-12-03", "Only the last 14 days can be ticked."],
    ["2026-11-24", "That day is before the correction was given."],
  ])("refuse %s and write nothing: %s", async (day, why) => {
    const guardian = await academy.as(WHO.guardian);
    for (const act of ["tick", "untick"] as const) {
      const refusal = await refused(academy, () => guardian.practice[act]({ correctionId, day }));
      expect(refusal).toEqual({ reason: "practice_day_invalid", why });
    }
  });

  it("end when the correction is no longer worked on", async () => {
    await (await academy.as(WHO.coach)).reviews.retire({ correctionId, reason: "Not needed" });
    const guardian = await academy.as(WHO.guardian);
    const why = await refused(academy, () => guardian.practice.tick({ correctionId, day: "2026-12-17" }));
    expect(why).toMatchObject({ reason: "practice_day_invalid" });
  });

  it("are the family's to tick: staff, other families and nobody are turned away", async () => {
    for (const personId of [WHO.coach, WHO.admin, WHO.otherGuardian, WHO.teen.personId]) {
      const caller = await academy.as(personId);
      const why = await refused(academy, () => caller.practice.tick({ correctionId, day: "2026-12-17" }));
      expect(why).toEqual({ reason: "not_found" });
    }
    const nobody = await academy.as(null);
    const why = await refused(academy, () => nobody.practice.tick({ correctionId, day: "2026-12-17" }));
    expect(why).toEqual({ reason: "not_signed_in" });
  });

  it("refuse a day that does not exist by naming the field", async () => {
    const guardian = await academy.as(WHO.guardian);
    expect(await refused(academy, () => guardian.practice.tick({ correctionId, day: "2026-02-30" }))).toBe(
      "BAD_REQUEST",
    );
  });
});
