import { blindItem } from "@/db/schema/mechanics";
import type { DrawInput } from "@/server/api/agreement/shapes";
import { type TestAcademy, WHO } from "./academy";
import { knee, kneePoints } from "./measures";
import { sendReview, takenRound } from "./review-desk";
import { keep, review } from "./review-drafts";

const ATHLETES = [WHO.child, WHO.teen, WHO.adult, WHO.stranger];

/** Eight reviews of four athletes, each with the front foot's contact marked and the front knee measured. */
export async function reviewedFrames(academy: TestAcademy): Promise<void> {
  for (let at = 0; at < 8; at += 1) {
    const athleteId = ATHLETES[at % 4]?.athleteId ?? "";
    const { roundId, clipId } = await takenRound(academy, `rnd_blind_${at}`, athleteId);
    const eventMarks = [{ clipId, event: "front_foot_contact" as const, frame: 108 }];
    const measures = [knee({ clipId })];
    const document = review({ keeps: [keep()], corrections: [], eventMarks, measures });
    await sendReview(academy, roundId, document);
    academy.clock.ms += 60_000;
  }
}

/** Draws a set as the admin. @returns its id */
export async function drawn(academy: TestAcademy, asked: Partial<DrawInput> = {}): Promise<string> {
  const admin = await academy.as(WHO.admin);
  const { setId } = await admin.agreement.draw({
    ...{ name: "Front knee", way: "judge", view: "open_side", checkpointIds: ["front-knee-bent"] },
    frames: 6,
    ...asked,
  });
  return setId;
}

/** The items of a set in their order, by id. */
export async function itemIds(academy: TestAcademy, setId: string): Promise<string[]> {
  const rows = await academy.db.select().from(blindItem);
  return rows
    .filter((row) => row.setId === setId)
    .sort((one, other) => one.position - other.position)
    .map(({ id }) => id);
}

/** A coach rates the first items of a set, one after the other, as the screen does: 0 to 3, null for not seen. */
export async function judge(
  academy: TestAcademy,
  personId: string,
  setId: string,
  scores: readonly (0 | 1 | 2 | 3 | null)[],
): Promise<void> {
  const coach = await academy.as(personId);
  for (const score of scores) {
    const { item } = await coach.agreement.next({ setId });
    const answer = score === null ? { kind: "unseen" as const } : { kind: "judged" as const, score };
    await coach.agreement.rate({ itemId: item?.id ?? "", answer });
  }
}

/** The points of a knee bent by an angle, as they are placed blind. */
export const placedKnee = (flexionDeg: number) => ({
  kind: "placed" as const,
  points: kneePoints(flexionDeg).map(({ x, y }) => ({ x, y })),
  untilFrame: null,
});
