import { describe, expect, it } from "vitest";
import { NO_GAME } from "@/server/domain/throwing/validate-game";
import { makeAcademy, WHO } from "../helpers/academy";

const athleteId = WHO.child.athleteId;
const GAME = { athleteId, thrownOn: "2026-11-25", kind: "game", pitches: 20 } as const;

describe("advice of the book", () => {
  it("stands beside the number as no limit, on a day that holds a game, and changes nothing", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const before = await guardian.throwing.view({ athleteId });
    expect(before.arm.why.join(" ")).not.toContain("Advice");
    const { arm } = await guardian.throwing.log(GAME);
    expect(arm.words).toBe("at most 65 by the book");
    expect(arm.why.at(-1)).toBe("Advice, not a limit: one game a day by the book, and this day has one.");
  });

  it("is said once twelve months hold the innings that the book names", async () => {
    const academy = await makeAcademy();
    const guardian = await academy.as(WHO.guardian);
    const season = ["2026-01-10", "2026-03-10", "2026-05-10", "2026-07-10"];
    for (const thrownOn of season)
      await guardian.throwing.log({ ...GAME, thrownOn, game: { ...NO_GAME, outs: 60, opponent: "" } });
    const { arm } = await guardian.throwing.view({ athleteId });
    expect(arm.words).toBe("at most 85 by the book");
    expect(arm.why).toContain(
      "Advice, not a limit: at most 80 innings over 12 months by the book; those to Wed 25 Nov have 80.",
    );
  });
});
