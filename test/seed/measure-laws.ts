import { expect, it } from "vitest";
import { timeBaseOf } from "@/server/domain/clips/time-base";
import { BLIND_FRAMES } from "@/server/domain/mechanics/blind-draw";
import { errorFigure } from "@/server/domain/mechanics/measure-error";
import { measureValue } from "@/server/domain/mechanics/measure-value";
import { draftMarkSchema } from "@/server/domain/reviews/draft";
import { type BuiltDay, groupedBy } from "./demo-days";

/** What the domain asks of measures, of their repeats and of marks. */
export function describeMeasures({ rows, nowMs }: BuiltDay): void {
  const clipOf = new Map(rows.clip.map((each) => [each.id, each]));
  const throwsOf = new Map(rows.athlete.map((each) => [each.id, each.throws]));
  const measureOf = new Map(rows.measurement.map((each) => [each.id, each]));

  it("holds measures of every kind, each worth what the domain computes from its points", () => {
    expect(new Set(rows.measurement.map(({ kind }) => kind)).size).toBe(9);
    const amiss = rows.measurement.filter((row) => {
      const clip = clipOf.get(row.clipId);
      const fps = clip?.capturedFps ?? 0;
      const frameTimesMs = Array.from({ length: clip?.frameCount ?? 0 }, (_, frame) => (frame * 1000) / fps);
      const taken = { ...row, untilFrame: row.untilFrame ?? null, points: JSON.parse(row.points) };
      const timeBase = timeBaseOf({ frameTimesMs, capturedFps: fps });
      const throws = throwsOf.get(row.athleteId) ?? "right";
      const result = measureValue(taken, { view: clip?.view ?? null, throws, timeBase, frameTimesMs });
      return "problem" in result || result.value !== row.value || clip?.athleteId !== row.athleteId;
    });
    expect(amiss).toEqual([]);
  });

  it("has enough repeats for the error of some measures and too few for others, all of the past", () => {
    const repeats = rows.measurement.filter((row) => row.repeatOfId);
    const amiss = repeats.filter((row) => {
      const first = measureOf.get(row.repeatOfId ?? "");
      const isSame = first?.kind === row.kind && first?.frame === row.frame && first?.clipId === row.clipId;
      return !isSame || row.reviewId || row.atMs <= (first?.atMs ?? nowMs) || row.atMs > nowMs;
    });
    expect(amiss).toEqual([]);
    const kinds = groupedBy(repeats, ({ kind, view }) => `${kind} ${view}`);
    const figureOf = (key: string) =>
      errorFigure(kinds(key).map((row) => [row.value, measureOf.get(row.repeatOfId ?? "")?.value ?? 0]));
    const knee = figureOf("front_knee_flexion open_side");
    expect(knee?.isEnough).toBe(true);
    /* A centimetre of placing over limbs of about forty gives a few degrees. */
    expect(knee?.plusMinus).toBeGreaterThan(1);
    expect(knee?.plusMinus).toBeLessThan(8);
    expect(figureOf("shoulder_tilt back")?.isEnough).toBeFalsy();
  });

  it("lets a few frames wait for a second measure, each with its film", () => {
    const open = rows.remeasureRequest.filter((row) => !row.doneAtMs);
    expect(open.length).toBeGreaterThanOrEqual(1);
    expect(open.length).toBeLessThanOrEqual(4);
    for (const { measurementId } of open) {
      expect(clipOf.get(measureOf.get(measurementId)?.clipId ?? "")?.state).toBe("drawing");
    }
  });

  it("draws blind sets that are large enough, rated between their drawing and their closing, once a coach", () => {
    const setOf = new Map(rows.blindSet.map((each) => [each.id, each]));
    const itemOf = new Map(rows.blindItem.map((each) => [each.id, each]));
    for (const { id } of rows.blindSet) {
      expect(rows.blindItem.filter(({ setId }) => setId === id).length).toBeGreaterThanOrEqual(
        BLIND_FRAMES.min,
      );
    }
    expect(new Set(rows.blindSet.map(({ closedAtMs }) => closedAtMs === null))).toEqual(
      new Set([true, false]),
    );
    for (const { clipId } of rows.blindItem) expect(clipOf.get(clipId)?.state).toBe("drawing");
    const amiss = rows.blindRating.filter(({ itemId, ratedAtMs }) => {
      const set = setOf.get(itemOf.get(itemId)?.setId ?? "");
      return !set || ratedAtMs <= set.madeAtMs || ratedAtMs >= (set.closedAtMs ?? nowMs);
    });
    expect(amiss).toEqual([]);
    const said = rows.blindRating.map(({ itemId, coachPersonId }) => `${itemId} ${coachPersonId}`);
    expect(new Set(said).size).toBe(said.length);
  });

  it("draws marks on films that are there, each with the points of its guide", () => {
    for (const { reviewId, remarkId, position, ...row } of rows.drawnMark) {
      expect(clipOf.get(row.clipId)?.state).toBe("drawing");
      const mark = { ...row, untilFrame: row.untilFrame ?? null, points: JSON.parse(row.points), text: "" };
      expect(draftMarkSchema.safeParse(mark).success, row.guide).toBe(true);
    }
  });
}
