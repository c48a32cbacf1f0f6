import { eq } from "drizzle-orm";
import { expect } from "vitest";
import { notice } from "@/db/schema/notices";
import { round, roundEvent } from "@/db/schema/rounds";
import type { NoticeKind } from "@/server/domain/notices/notice";
import { type TestAcademy, WHO } from "./academy";
import { addWaitingClip, said } from "./clips";

/** When a round received at the test's own time is due: the close of Fri 27 Nov 2026, 21:00 in New York. */
export const DUE_MS = Date.UTC(2026, 10, 28, 2);
export const HOUR_MS = 3_600_000;

/** A round that has just come in, of the 12-year-old unless another is named, without throws. @returns its id */
export async function received(
  academy: TestAcademy,
  athleteId: string = WHO.child.athleteId,
  guardian: string = WHO.guardian,
): Promise<string> {
  const clipId = await addWaitingClip(academy, athleteId, guardian);
  const caller = await academy.as(guardian);
  const clips = [said(clipId, { pitchesThrown: 0 })];
  return (await caller.rounds.send({ athleteId, roundId: null, clips })).roundId;
}

/** A round as it is kept. */
export const roundRow = async ({ db }: TestAcademy, roundId: string) =>
  (await db.select().from(round).where(eq(round.id, roundId)))[0];

/** What happened to all rounds, in the order it did. */
export const roundEvents = ({ db }: TestAcademy) => db.select().from(roundEvent);

/** Who was told of a kind of thing. */
export const toldOf = async ({ db }: TestAcademy, kind: NoticeKind) =>
  (await db.select().from(notice).where(eq(notice.kind, kind))).map((each) => each.toPersonId);

/** Holds a call to being refused for this reason, with these facts. */
export async function refused(call: Promise<unknown>, reason: string, facts: object = {}) {
  const failure = await call.catch((error: unknown) => error);
  expect(failure).toMatchObject({ cause: { detail: { reason, ...facts } } });
}

/** Holds that each of the people is turned away as if there were no such thing, and everything stays as it was. */
export async function turnedAway(
  academy: TestAcademy,
  people: readonly string[],
  call: (who: string) => Promise<unknown>,
) {
  for (const who of people) {
    const before = academy.snapshot();
    await refused(call(who), "not_found");
    expect(academy.snapshot()).toBe(before);
  }
}
