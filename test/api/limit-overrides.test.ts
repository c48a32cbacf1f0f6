import { describe, expect, it } from "vitest";
import { limitOverride } from "@/db/schema/throwing";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { because, type Caller, refuses } from "../helpers/refuses";
import { told } from "../helpers/throwing-desk";

const CHILD = WHO.child.athleteId;
const TODAY = "2026-11-25";
const ASKED = { athleteId: CHILD, day: TODAY, pitches: 60, reason: "The last game of the season" };
const OVERRIDE = (api: Caller) => api.ruleBooks.overrideLimit(ASKED);

/** The child threw 51 yesterday, so that the book leaves none today. */
async function makeRestingAcademy(): Promise<TestAcademy> {
  const academy = await makeAcademy();
  const guardian = await academy.as(WHO.guardian);
  await guardian.throwing.log({ athleteId: CHILD, thrownOn: "2026-11-24", kind: "game", pitches: 51 });
  return academy;
}

const wordsFor = async (academy: TestAcademy) =>
  (await (await academy.as(WHO.guardian)).throwing.view({ athleteId: CHILD })).arm;

describe("an override of a limit", () => {
  it("lifts the number of one day, and is never worded as the book's", async () => {
    const academy = await makeRestingAcademy();
    expect((await wordsFor(academy)).words).toBe("none by the book");
    await OVERRIDE(await academy.as(WHO.admin));
    const { words, why } = await wordsFor(academy);
    expect(words).toBe("60 by an admin's override, not by the book");
    expect(why[0]).toBe("An admin overrode the limit: 60 in all on this day. That is not the book's number.");
    academy.clock.ms += 86_400_000;
    expect((await wordsFor(academy)).words).toBe("none by the book");
  });

  it("is told to the guardian and the coach, stands on the record, and is read by the family with its reason", async () => {
    const academy = await makeRestingAcademy();
    const admin = await academy.as(WHO.admin);
    await OVERRIDE(admin);
    expect(await told(academy, "limit_overridden")).toEqual([WHO.coach, WHO.guardian]);
    const { rows } = await admin.academy.record({ page: 1 });
    expect(rows[0]).toMatchObject({
      ...{ action: "limit.overridden", actorName: "Ada Frost", subjectName: "Kit Marsh" },
      facts: { day: TODAY, pitches: 60, byTheBook: 0 },
    });
    const { overrides, mayOverride } = await (await academy.as(WHO.guardian)).ruleBooks.overrides({
      athleteId: CHILD,
    });
    expect(mayOverride).toBe(false);
    expect(overrides).toMatchObject([
      { day: TODAY, pitches: 60, reason: "The last game of the season", byName: "Ada Frost", stands: true },
    ]);
  });

  it("can be taken back with a reason: the book holds again, and both stay on record", async () => {
    const academy = await makeRestingAcademy();
    const admin = await academy.as(WHO.admin);
    await OVERRIDE(admin);
    academy.clock.ms += 1000;
    const later = await academy.as(WHO.admin);
    await later.ruleBooks.overrideLimit({ ...ASKED, pitches: 0, reason: "The game was called off" });
    expect((await wordsFor(academy)).words).toBe("none by the book");
    const { overrides } = await admin.ruleBooks.overrides({ athleteId: CHILD });
    expect(overrides.map(({ pitches, stands }) => [pitches, stands])).toEqual([
      [0, false],
      [60, false],
    ]);
    expect(await told(academy, "limit_overridden")).toHaveLength(4);
  });

  it("never overrides pain: it is refused while the arm is stopped, and one that stands lifts nothing", async () => {
    const academy = await makeRestingAcademy();
    const admin = await academy.as(WHO.admin);
    await OVERRIDE(admin);
    await admin.throwing.reportPain({ athleteId: CHILD, kind: "pain", feltOn: TODAY });
    expect((await wordsFor(academy)).words).toBe("no throwing: pain reported");
    await refuses(academy, WHO.admin, OVERRIDE, {
      message: expect.stringContaining("Nothing overrides pain"),
      ...because("nothing_overrides_pain", { since: TODAY }),
    });
  });

  it.each([
    ["a day that is past", { day: "2026-11-24" }, because("override_invalid")],
    ["a day too far ahead", { day: "2026-12-10" }, because("override_invalid")],
    ["no more than the book leaves", { day: "2026-12-02", pitches: 85 }, because("override_invalid")],
    ["taking back what does not stand", { pitches: 0 }, because("override_invalid")],
    ["no reason", { reason: "   " }, { code: "BAD_REQUEST" }],
    ["a reason that is too long", { reason: "x".repeat(501) }, { code: "BAD_REQUEST" }],
    ["less than nothing", { pitches: -1 }, { code: "BAD_REQUEST" }],
    ["more than anybody throws", { pitches: 401 }, { code: "BAD_REQUEST" }],
    ["a day that is none", { day: "2026-02-30" }, { code: "BAD_REQUEST" }],
    ["another athlete that is not there", { athleteId: "ath_none" }, because("not_found")],
  ])("is refused for %s, and nothing is written", async (_what, change, refusal) => {
    const academy = await makeRestingAcademy();
    const ask = (api: Caller) => api.ruleBooks.overrideLimit({ ...ASKED, ...change });
    await refuses(academy, WHO.admin, ask, refusal);
  });

  it("is an admin's alone: no coach and no guardian gives one", async () => {
    const academy = await makeRestingAcademy();
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.guardian, WHO.otherGuardian, WHO.teen.personId]) {
      await refuses(academy, personId, OVERRIDE, because("not_found"));
    }
    await refuses(academy, null, OVERRIDE, because("not_signed_in"));
    await refuses(
      academy,
      WHO.otherGuardian,
      (api) => api.ruleBooks.overrides({ athleteId: CHILD }),
      because("not_found"),
    );
  });

  it("stands for good: its row can be neither changed nor removed", async () => {
    const academy = await makeRestingAcademy();
    await OVERRIDE(await academy.as(WHO.admin));
    await expect(academy.db.delete(limitOverride)).rejects.toThrow();
    expect(await academy.db.select().from(limitOverride)).toHaveLength(1);
  });
});
