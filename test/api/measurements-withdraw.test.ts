import { beforeEach, describe, expect, it } from "vitest";
import { measurement, remeasureRequest } from "@/db/schema/mechanics";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { knee } from "../helpers/measures";
import { refused, sendReview, takenRound } from "../helpers/review-desk";
import { keep, review } from "../helpers/review-drafts";

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
  const { roundId, clipId } = await takenRound(academy);
  await sendReview(
    academy,
    roundId,
    review({ keeps: [keep()], corrections: [], measures: [knee({ clipId })] }),
  );
});

/** The coach asks another for a second measure. @returns the request's id */
async function asked(forPersonId: string): Promise<string> {
  const [measure] = await academy.db.select().from(measurement);
  const coach = await academy.as(WHO.coach);
  await coach.measurements.askAgain({ measurementId: measure?.id ?? "", forPersonId });
  const rows = await academy.db.select().from(remeasureRequest);
  return rows.find((row) => row.doneAtMs === null)?.id ?? "";
}

describe("withdrawing a request", () => {
  const withdrawing = (personId: string, requestId: string) => async () =>
    (await academy.as(personId)).measurements.withdraw({ requestId });

  it.each([
    ["who asked for it", WHO.coach],
    ["an admin", WHO.admin],
  ])("is done by %s: nobody measures it any more, and the record says who", async (_, personId) => {
    const requestId = await asked(WHO.otherCoach);
    await withdrawing(personId, requestId)();
    for (const each of [WHO.coach, WHO.otherCoach, WHO.admin]) {
      expect((await (await academy.as(each)).measurements.again({})).waiting).toEqual([]);
    }
    const rows = await academy.db.select().from(remeasureRequest);
    expect(rows).toMatchObject([{ doneAtMs: academy.clock.ms, doneMeasurementId: null }]);
    const looking = async () => (await academy.as(WHO.otherCoach)).measurements.blind({ requestId });
    expect(await refused(academy, looking)).toMatchObject({ reason: "changed_meanwhile" });
    const acts = academy.sqlite.prepare("SELECT actor_person_id FROM audit_log WHERE action = ?");
    expect(acts.pluck().all("remeasure.withdrawn")).toEqual([personId]);
  });

  it("is on an admin's list, whoever is asked", async () => {
    const requestId = await asked(WHO.otherCoach);
    const { isCoach, waiting } = await (await academy.as(WHO.admin)).measurements.again({});
    expect([isCoach, waiting]).toMatchObject([false, [{ requestId, mayWithdraw: true }]]);
  });

  it("is refused to another coach, even the one asked, to the family, and once it is over", async () => {
    const requestId = await asked(WHO.otherCoach);
    for (const personId of [WHO.otherCoach, WHO.guardian]) {
      const reason = "not_found";
      expect(await refused(academy, withdrawing(personId, requestId))).toMatchObject({ reason });
    }
    await withdrawing(WHO.coach, requestId)();
    const reason = "changed_meanwhile";
    expect(await refused(academy, withdrawing(WHO.coach, requestId))).toMatchObject({ reason });
  });

  it("lets the same frame be asked for again", async () => {
    await withdrawing(WHO.coach, await asked(WHO.otherCoach))();
    const requestId = await asked(WHO.otherCoach);
    const theirs = await (await academy.as(WHO.otherCoach)).measurements.again({});
    expect(theirs.waiting).toMatchObject([{ requestId }]);
  });
});
