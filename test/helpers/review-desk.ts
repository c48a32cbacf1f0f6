import { clip } from "@/db/schema/clips";
import { round, roundEvent } from "@/db/schema/rounds";
import type { ClipPart } from "@/server/domain/clips/clip";
import type { CameraView } from "@/server/domain/mechanics/delivery";
import type { CheckDraft, ReviewDraft } from "@/server/domain/reviews/draft";
import { type TestAcademy, WHO } from "./academy";
import { THREE_SECONDS } from "./clips";

/** A round of the child that the coach has taken, with one clip from the open side. */
export async function takenRound(
  academy: TestAcademy,
  id = "rnd_1",
  athleteId: string = WHO.child.athleteId,
) {
  const { db, clock } = academy;
  const receivedAtMs = clock.ms - 3_600_000;
  await db.insert(round).values({
    id,
    athleteId,
    siteId: WHO.site,
    state: "taken",
    coachPersonId: WHO.coach,
    receivedAtMs,
    takenAtMs: clock.ms - 600_000,
    dueAtMs: clock.ms + 86_400_000,
  });
  await db.insert(roundEvent).values({
    id: `evt_${id}`,
    roundId: id,
    kind: "received",
    actorPersonId: WHO.guardian,
    atMs: receivedAtMs,
  });
  const clipId = await addClip(academy, id, "first", athleteId);
  return { roundId: id, clipId };
}

/** A clip of 180 frames at 60 a second, ready to be watched. @returns its id */
export async function addClip(
  { db, clock }: TestAcademy,
  roundId: string,
  part: ClipPart,
  athleteId: string = WHO.child.athleteId,
  view: CameraView = "open_side",
): Promise<string> {
  const id = `clp_${roundId}_${part}_${view}`;
  await db.insert(clip).values({
    id,
    athleteId,
    roundId,
    part,
    state: "ready",
    view,
    pitchesThrown: 6,
    alreadyOnLog: true,
    filmedOn: "2026-11-25",
    createdAtMs: clock.ms,
    retainUntil: "2027-05-25",
    ...THREE_SECONDS,
  });
  return id;
}

/** Puts the reply's clip into a sent round, so that it can be checked. @returns the clip's id */
export async function answer(academy: TestAcademy, roundId: string): Promise<string> {
  const clipId = await addClip(academy, roundId, "reply");
  academy.sqlite
    .prepare("UPDATE round SET state = 'answered', answered_at_ms = ?, version = version + 1 WHERE id = ?")
    .run(academy.clock.ms, roundId);
  return clipId;
}

/** Saves a draft as the coach. @returns its version */
export async function save(
  academy: TestAcademy,
  roundId: string,
  draft: { kind: "review"; document: ReviewDraft } | { kind: "check"; document: CheckDraft },
  version = 0,
  personId: string = WHO.coach,
): Promise<number> {
  const caller = await academy.as(personId);
  return (await caller.reviews.saveDraft({ roundId, version, ...draft })).version;
}

/** Saves and sends a review as the coach. */
export async function sendReview(
  academy: TestAcademy,
  roundId: string,
  document: ReviewDraft,
): Promise<string> {
  const version = await save(academy, roundId, { kind: "review", document });
  return (await (await academy.as(WHO.coach)).reviews.send({ roundId, version })).reviewId;
}

/** Saves a check and settles the round as the coach. */
export async function settle(academy: TestAcademy, roundId: string, document: CheckDraft): Promise<string> {
  const version = await save(academy, roundId, { kind: "check", document });
  return (await (await academy.as(WHO.coach)).reviews.settle({ roundId, version })).reviewId;
}

/** Runs a call that must be refused, and shows that it wrote nothing. @returns the refusal's cause */
export async function refused(academy: TestAcademy, call: () => Promise<unknown>): Promise<unknown> {
  const before = academy.snapshot();
  const error = await call().then(
    () => null,
    (thrown: unknown) => thrown as { cause?: { detail?: unknown }; code?: string },
  );
  if (error === null) throw new Error("It was not refused.");
  if (academy.snapshot() !== before) throw new Error("It was refused and yet wrote something.");
  return error.cause?.detail ?? error.code;
}
