import { beforeEach, describe, expect, it } from "vitest";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";

const CHILD = WHO.child.athleteId;
const DAY_MS = 86_400_000;

let academy: TestAcademy;

beforeEach(async () => {
  academy = await makeAcademy();
});

const guardian = () => academy.as(WHO.guardian);

const said = async (day: string, knownOn: string) =>
  (await (await guardian()).throwing.saidOn({ athleteId: CHILD, day, knownOn })).words;

describe("what was said on a day, by what was known then", () => {
  it("leaves out an entry that came late, and its correction until it was made", async () => {
    academy.clock.ms += DAY_MS;
    const game = { athleteId: CHILD, thrownOn: "2026-11-25", kind: "game" as const };
    const { entryId } = await (await guardian()).throwing.log({ ...game, pitches: 51 });
    academy.clock.ms += DAY_MS;
    const corrected = { entryId, thrownOn: "2026-11-25", kind: "game" as const, pitches: 20 };
    await (await guardian()).throwing.correct(corrected);
    expect(await said("2026-11-26", "2026-11-25")).toBe("at most 85 by the book");
    expect(await said("2026-11-26", "2026-11-26")).toBe("none by the book");
    expect(await said("2026-11-26", "2026-11-27")).toBe("at most 85 by the book");
  });

  it("counts an outing until it was called off, and pain until it was cleared", async () => {
    const outing = { athleteId: CHILD, plannedOn: "2026-11-28", pitches: 60 };
    const { outingId } = await (await guardian()).throwing.planOuting(outing);
    academy.clock.ms += DAY_MS;
    await (await guardian()).throwing.cancelOuting({ outingId });
    await (await guardian()).throwing.reportPain({ athleteId: CHILD, kind: "pain", feltOn: "2026-11-26" });
    academy.clock.ms += DAY_MS;
    const clearance = { athleteId: CHILD, symptomFreeSince: "2026-11-27", examinedBy: "Our physician" };
    await (await guardian()).throwing.clearPain(clearance);
    expect(await said("2026-11-27", "2026-11-25")).toBe("at most 20 by the book");
    expect(await said("2026-11-27", "2026-11-26")).toBe("no throwing: pain reported");
    expect(await said("2026-11-27", "2026-11-27")).toBe("at most 85 by the book");
  });

  it("is the same as today's answer for today", async () => {
    await (await guardian()).throwing.log({
      ...{ athleteId: CHILD, thrownOn: "2026-11-24", kind: "game", pitches: 30 },
    });
    const { arm } = await (await guardian()).throwing.view({ athleteId: CHILD });
    expect(await said("2026-11-25", "2026-11-25")).toBe(arm.words);
  });

  it.each([
    ["a record that is still to come", "2026-11-25", "2026-11-26"],
    ["a day before birth", "1990-01-01", "2026-11-25"],
    ["a day years ahead", "2030-01-01", "2026-11-25"],
  ])("knows nothing of %s", async (_what, day, knownOn) => {
    await expect(said(day, knownOn)).rejects.toMatchObject({ code: "NOT_FOUND" });
  });
});
