import { eq } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { athlete, guardianship } from "@/db/schema/people";
import { painClearance, painReport } from "@/db/schema/throwing";
import { makeAcademy, WHO } from "../helpers/academy";
import { refused } from "../helpers/refuses";
import { bookBullpen, told } from "../helpers/throwing-desk";

const CHILD = WHO.child.athleteId;
const ADULT = WHO.adult.athleteId;
const TODAY = "2026-11-25";
const WELL = { athleteId: CHILD, symptomFreeSince: TODAY, examinedBy: "Dr Lind, Brookside clinic" };

describe("pain", () => {
  const HURTS = { athleteId: CHILD, kind: "pain", feltOn: TODAY, note: "Inside of the elbow" } as const;

  it("reported by anyone stops all throwing, tells guardian and coach at once, and names booked sessions", async () => {
    const academy = await makeAcademy();
    await bookBullpen(academy, "2026-12-02");
    await (await academy.as(WHO.otherCoach)).throwing.reportPain(HURTS);
    expect(await told(academy, "pain_reported")).toEqual([WHO.coach, WHO.guardian]);
    expect(await told(academy, "session_without_room")).toEqual([WHO.coach, WHO.guardian]);
    const view = await (await academy.as(WHO.guardian)).throwing.view({ athleteId: CHILD });
    expect(view.arm.words).toBe("no throwing: pain reported");
    expect(view.pain).toMatchObject({
      stop: { kind: "pain", firstFeltOn: TODAY, lastFeltOn: TODAY },
      mayClear: true,
      reports: [{ note: "Inside of the elbow", byName: "Dana Field" }],
    });
  });

  it("of an athlete without a coach is told to every admin", async () => {
    const academy = await makeAcademy();
    await academy.db.update(athlete).set({ coachPersonId: null }).where(eq(athlete.id, CHILD));
    await (await academy.as(WHO.guardian)).throwing.reportPain(HURTS);
    expect(await told(academy, "pain_reported")).toEqual([WHO.admin, WHO.guardian]);
  });

  it("felt on a day to come is refused, and so is a stranger's word", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await refused(academy, () => guardian.throwing.reportPain({ ...HURTS, feltOn: "2026-11-26" }), {
      code: "UNPROCESSABLE_CONTENT",
    });
    const stranger = await academy.as(WHO.otherGuardian);
    await refused(academy, () => stranger.throwing.reportPain(HURTS), { code: "NOT_FOUND" });
  });

  it("is cleared by the guardian of a minor, with since when and by whom examined", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.reportPain(HURTS);
    academy.clock.ms += 3 * 86_400_000;
    const later = await academy.as(WHO.guardian);
    await later.throwing.clearPain({ ...WELL, symptomFreeSince: "2026-11-26" });
    const view = await later.throwing.view({ athleteId: CHILD });
    expect(view.arm.words).toBe("at most 85 by the book");
    expect(view.pain).toMatchObject({
      stop: null,
      clearances: [
        { symptomFreeSince: "2026-11-26", examinedBy: "Dr Lind, Brookside clinic", byName: "Gwen Marsh" },
      ],
    });
    expect(await told(academy, "pain_cleared")).toEqual([WHO.coach, WHO.guardian]);
  });

  it("cannot be cleared by a coach, an admin, the minor or a stranger", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.coach)).throwing.reportPain({ ...HURTS, athleteId: WHO.teen.athleteId });
    const well = { ...WELL, athleteId: WHO.teen.athleteId };
    for (const personId of [WHO.coach, WHO.otherCoach, WHO.admin, WHO.teen.personId, WHO.otherGuardian]) {
      const caller = await academy.as(personId);
      await refused(academy, () => caller.throwing.clearPain(well), { code: "NOT_FOUND" });
    }
    expect(
      (await (await academy.as(WHO.admin)).throwing.view({ athleteId: WHO.teen.athleteId })).pain.mayClear,
    ).toBe(false);
  });

  it("of an athlete of age is theirs to clear, not a guardian's whom they let look on", async () => {
    const academy = await makeAcademy();
    await academy.db.insert(guardianship).values({
      guardianPersonId: WHO.guardian,
      athleteId: ADULT,
      sinceMs: 0,
    });
    await academy.db.update(athlete).set({ grantsGuardians: true }).where(eq(athlete.id, ADULT));
    const adult = await academy.as(WHO.adult.personId);
    await adult.throwing.reportPain({ ...HURTS, athleteId: ADULT });
    const guardian = await academy.as(WHO.guardian);
    expect((await guardian.throwing.view({ athleteId: ADULT })).pain.mayClear).toBe(false);
    await refused(academy, () => guardian.throwing.clearPain({ ...WELL, athleteId: ADULT }), {
      code: "NOT_FOUND",
    });
    academy.clock.ms += 60_000;
    await (await academy.as(WHO.adult.personId)).throwing.clearPain({ ...WELL, athleteId: ADULT });
    expect(await academy.db.select().from(painClearance)).toHaveLength(1);
  });

  it.each([
    ["before it was last felt", { symptomFreeSince: "2026-11-24" }, "It was still felt on Wed 25 Nov"],
    ["after today", { symptomFreeSince: "2026-11-26" }, "cannot be after today"],
    ["without who examined it", { examinedBy: "  " }, "Say who examined the arm."],
  ])("stays when the clearance is %s", async (_, change, words) => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await guardian.throwing.reportPain(HURTS);
    await refused(academy, () => guardian.throwing.clearPain({ ...WELL, ...change }), {
      code: "UNPROCESSABLE_CONTENT",
      message: expect.stringContaining(words),
    });
  });

  it("that was never reported cannot be cleared", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    await refused(academy, () => guardian.throwing.clearPain(WELL), {
      code: "CONFLICT",
    });
  });

  it("told of after the clearance stops the arm again, even when it was felt before", async () => {
    const academy = await makeAcademy();
    await (await academy.as(WHO.guardian)).throwing.reportPain(HURTS);
    academy.clock.ms += 86_400_000;
    await (await academy.as(WHO.guardian)).throwing.clearPain(WELL);
    academy.clock.ms += 86_400_000;
    await (await academy.as(WHO.coach)).throwing.reportPain({ ...HURTS, feltOn: "2026-11-24" });
    const { pain } = await (await academy.as(WHO.guardian)).throwing.view({ athleteId: CHILD });
    expect(pain.stop).toMatchObject({ firstFeltOn: "2026-11-24" });
    expect(await academy.db.select().from(painReport)).toHaveLength(2);
  });
});
