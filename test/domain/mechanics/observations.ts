import type { ErrorFigure } from "@/server/domain/mechanics/measure-error";
import { type Observation, type ObservedDay, observedDays } from "@/server/domain/mechanics/observation";
import { addDays } from "@/server/domain/time/calendar-day";

let seen = 0;

/** One look at a front knee from the open side on 2 March, a clip of its own; other facts as given. */
export function observation(of: Partial<Observation> = {}): Observation {
  seen += 1;
  return {
    ...{ id: `look ${seen}`, checkpointId: "front-knee-bent", kind: "front_knee_flexion", value: 40 },
    ...{ day: "2026-03-02", clipId: `clip ${seen}`, frame: 41, view: "open_side", coachId: "ada" },
    ...{ pitchType: null, repeatOfId: null },
    ...of,
  };
}

/** The last day before a correction in {@link weekly}. */
export const GIVEN_ON = "2026-06-01";

/** Values of weekly days that end on {@link GIVEN_ON}, then of weekly days after it. */
export function weekly(before: readonly number[], after: readonly number[] = []): ObservedDay[] {
  const first = 1 - before.length;
  return observedDays(
    [...before, ...after].map((value, at) =>
      observation({ value, day: addDays(GIVEN_ON, 7 * (first + at)) }),
    ),
  );
}

/** An error that is known well enough to be printed. */
export function knownError(withinSd: number, degreesOfFreedom = 20): ErrorFigure {
  return { withinSd, plusMinus: 1.96 * withinSd, degreesOfFreedom, isEnough: degreesOfFreedom >= 15 };
}
