import { inArray } from "drizzle-orm";
import { expect, it } from "vitest";
import { clip } from "@/db/schema/clips";
import { account } from "@/db/schema/people";
import { clipsToDraw } from "@/server/data/demo-clips";
import { makeAcademy, WHO } from "../helpers/academy";
import { addWaitingClip } from "../helpers/clips";

it("draws the clips of families that can sign in before all others, the latest first", async () => {
  const academy = await makeAcademy();
  const { db, clock } = academy;
  const add = async (athleteId: string, personId: string, laterMs: number) => {
    clock.ms += laterMs;
    return addWaitingClip(academy, athleteId, personId);
  };
  const early = await add(WHO.child.athleteId, WHO.guardian, 0);
  const own = await add(WHO.adult.athleteId, WHO.adult.personId, 1000);
  const late = await add(WHO.stranger.athleteId, WHO.otherGuardian, 1000);
  await db.delete(account).where(inArray(account.personId, [WHO.otherGuardian, WHO.stranger.personId]));
  await db.update(clip).set({ state: "drawing" });
  expect(await clipsToDraw(db)).toEqual([own, early, late]);
});
