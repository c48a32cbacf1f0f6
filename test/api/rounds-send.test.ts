import { eq } from "drizzle-orm";
import { beforeEach, describe, expect, it } from "vitest";
import { notice } from "@/db/schema/notices";
import { consent } from "@/db/schema/people";
import { round, roundEvent } from "@/db/schema/rounds";
import { site, siteHours } from "@/db/schema/sites";
import { throwEntry } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { addWaitingClip, allClips, said } from "../helpers/clips";
import { toldOf } from "../helpers/rounds";
import { bookBullpen } from "../helpers/throwing-desk";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});

const kit = WHO.child.athleteId;
const asGuardian = () => academy.as(WHO.guardian);
const sendOne = async (roundId: string | null = null) => {
  const clipId = await addWaitingClip(academy, kit, WHO.guardian);
  return (await asGuardian()).rounds.send({ athleteId: kit, roundId, clips: [said(clipId)] });
};
const theRound = async () => (await academy.db.select().from(round))[0];

describe("sending clips", () => {
  it("begins a round due at the close of the second working day, logs the throws once, and tells coach and family", async () => {
    const side = await addWaitingClip(academy, kit, WHO.guardian);
    const back = await addWaitingClip(academy, kit, WHO.guardian);
    const answer = await (await asGuardian()).rounds.send({
      athleteId: kit,
      roundId: null,
      clips: [said(side), said(back, { view: "back", pitchesThrown: 30, alreadyOnLog: true })],
    });
    /* Wed 25 Nov; two working days: Thu, Fri; the site closes at 21:00, which is 02:00 UTC. */
    expect(answer).toEqual({
      roundId: expect.any(String),
      dueAtMs: Date.UTC(2026, 10, 28, 2),
      pitchesLogged: 12,
    });
    expect(await theRound()).toMatchObject({ state: "received", coachPersonId: null, siteId: WHO.site });
    expect(await academy.db.select().from(roundEvent)).toMatchObject([
      { kind: "received", actorPersonId: WHO.guardian },
    ]);
    expect(await allClips(academy)).toMatchObject([
      { id: side, state: "ready", part: "first", view: "open_side", position: 0, roundId: answer.roundId },
      { id: back, state: "ready", part: "first", view: "back", position: 1 },
    ]);
    expect(await academy.db.select().from(throwEntry)).toMatchObject([
      {
        kind: "bullpen",
        pitches: 12,
        thrownOn: "2026-11-25",
        clipId: side,
        reportedByPersonId: WHO.guardian,
      },
    ]);
    const told = await academy.db.select().from(notice);
    expect(told.map((each) => [each.toPersonId, each.kind])).toEqual([
      [WHO.guardian, "clip_received"],
      [WHO.coach, "clip_received"],
    ]);
    expect(told[0]?.body).toContain("Fri 27 Nov 21:00 (North site)");
  });

  it("answers a sent review: a new due, the reply apart from the first clips, and its coach is told", async () => {
    const { roundId } = await sendOne();
    await academy.db.update(round).set({
      state: "sent",
      coachPersonId: WHO.otherCoach,
      dueAtMs: null,
      replyFrom: "2026-11-27",
      lapsesOn: "2026-12-18",
    });
    academy.clock.ms = Date.UTC(2026, 11, 4, 20);
    const clipId = await addWaitingClip(academy, kit, WHO.guardian);
    const clips = [said(clipId, { filmedOn: "2026-12-03", pitchesThrown: 0 })];
    const answer = await (await asGuardian()).rounds.send({ athleteId: kit, roundId, clips });
    expect(answer).toEqual({ roundId, dueAtMs: Date.UTC(2026, 11, 8, 2), pitchesLogged: 0 });
    expect(await theRound()).toMatchObject({
      state: "answered",
      answeredAtMs: academy.clock.ms,
      lapsesOn: null,
    });
    expect((await allClips(academy)).map((each) => each.part)).toEqual(["first", "reply"]);
    expect(await academy.db.select().from(throwEntry)).toHaveLength(1);
    const told = await academy.db.select().from(notice).where(eq(notice.kind, "answer_received"));
    expect(told.map((each) => each.toPersonId)).toEqual([WHO.guardian, WHO.otherCoach]);
  });

  it("tells family and coach of the booked bullpen whose room the filmed pitches took away", async () => {
    await bookBullpen(academy, "2026-11-27");
    const clipId = await addWaitingClip(academy, kit, WHO.guardian);
    const clips = [said(clipId, { pitchesThrown: 51 })];
    await (await asGuardian()).rounds.send({ athleteId: kit, roundId: null, clips });
    expect(await toldOf(academy, "session_without_room")).toEqual([WHO.guardian, WHO.coach]);
  });

  it("lets an athlete of 13 send their own, whose guardian is told too", async () => {
    const clipId = await addWaitingClip(academy, WHO.teen.athleteId, WHO.teen.personId);
    const teen = await academy.as(WHO.teen.personId);
    await teen.rounds.send({ athleteId: WHO.teen.athleteId, roundId: null, clips: [said(clipId)] });
    const told = (await academy.db.select().from(notice)).map((each) => each.toPersonId);
    expect(told).toEqual([WHO.teen.personId, WHO.guardian, WHO.coach]);
  });

  it("does nothing a second time when the same request comes again", async () => {
    const requestId = "0b5a3f0e-1111-4222-8333-444455556666";
    const clipId = await addWaitingClip(academy, kit, WHO.guardian);
    const input = { athleteId: kit, roundId: null, clips: [said(clipId)] };
    const first = await (await academy.as(WHO.guardian, requestId)).rounds.send(input);
    const before = academy.snapshot();
    expect(await (await academy.as(WHO.guardian, requestId)).rounds.send(input)).toEqual(first);
    expect(academy.snapshot()).toBe(before);
  });
});

describe("sending clips is refused, and nothing is written,", () => {
  const refused = async (
    what: Partial<{ athleteId: string; roundId: string | null; clips: ReturnType<typeof said>[] }>,
    as: string,
    reason: string,
  ) => {
    const clipId = await addWaitingClip(academy, kit, WHO.guardian);
    const before = academy.snapshot();
    const input = { athleteId: kit, roundId: null, clips: [said(clipId)], ...what };
    const failure = await (await academy.as(as)).rounds.send(input).catch((error: unknown) => error);
    expect(failure).toMatchObject({ cause: { detail: { reason } } });
    expect(academy.snapshot()).toBe(before);
  };

  it("without a live consent", async () => {
    const given = {
      athleteId: kit,
      personId: WHO.guardian,
      purpose: "video",
      textVersion: "video-1",
    } as const;
    await academy.db
      .insert(consent)
      .values({ ...given, id: "con_x", kind: "withdrawn", atMs: academy.clock.ms });
    await refused({}, WHO.guardian, "consent_missing");
  });

  it("for clips of two days, of a day to come, or from before the athlete was born", async () => {
    const [a, b] = [
      await addWaitingClip(academy, kit, WHO.guardian),
      await addWaitingClip(academy, kit, WHO.guardian),
    ];
    const two = [said(a), said(b, { filmedOn: "2026-11-24" })];
    await refused({ clips: two }, WHO.guardian, "clips_of_two_days");
    await refused({ clips: [said(a, { filmedOn: "2026-11-26" })] }, WHO.guardian, "throw_entry_invalid");
    await refused({ clips: [said(a, { filmedOn: "2014-05-09" })] }, WHO.guardian, "throw_entry_invalid");
  });

  it("for an upload that is gone, of another athlete, or of another person", async () => {
    const teens = await addWaitingClip(academy, WHO.teen.athleteId, WHO.guardian);
    const theirs = await addWaitingClip(academy, WHO.teen.athleteId, WHO.teen.personId);
    await refused({ clips: [said("clp_nothing")] }, WHO.guardian, "upload_missing");
    await refused({ clips: [said(teens)] }, WHO.guardian, "upload_missing");
    const clips = [said(theirs)];
    await refused({ athleteId: WHO.teen.athleteId, clips }, WHO.guardian, "upload_missing");
  });

  it("into a round that takes no clip: one just received, one of another athlete, one that has lapsed", async () => {
    const { roundId } = await sendOne();
    await refused({ roundId }, WHO.guardian, "round_state");
    await refused({ roundId, athleteId: WHO.teen.athleteId }, WHO.guardian, "not_found");
    await refused({ roundId: "rnd_nothing" }, WHO.guardian, "not_found");
    await academy.db.update(round).set({ state: "sent", dueAtMs: null, lapsesOn: "2026-11-25" });
    await refused({ roundId }, WHO.guardian, "round_state");
  });

  it("at a site without hours, which can promise nothing", async () => {
    await academy.db.delete(siteHours);
    await refused({}, WHO.guardian, "hours_missing");
    expect((await academy.db.select().from(site))[0]?.name).toBe("North site");
  });

  it("to another family, to staff, and to a minor's guardian once the athlete is of age", async () => {
    for (const who of [WHO.otherGuardian, WHO.coach, WHO.admin]) await refused({}, who, "not_found");
    const clipId = await addWaitingClip(academy, WHO.adult.athleteId, WHO.adult.personId);
    await refused({ athleteId: WHO.adult.athleteId, clips: [said(clipId)] }, WHO.guardian, "not_found");
  });
});
