import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { clipParameters } from "@/seed/clips/clip-parameters";
import { EVENT_TIMES_S } from "@/seed/clips/timeline";
import { truthOf } from "@/seed/clips/truth";
import { likelyCapturedFps } from "@/server/domain/clips/capture-rate";
import { eventDurations } from "@/server/domain/clips/event-durations";
import { timeBaseOf } from "@/server/domain/clips/time-base";
import { stripClip } from "@/server/media/strip-clip";
import { makeClip } from "../helpers/make-clip";
import { scratchFolder, writeScratch } from "../helpers/scratch-folder";

const folder = scratchFolder();

/**
 * What a phone saves of a drawn delivery: recorded at one rate, written to be played at another. The frames it holds are
 * those of the delivery's own truth; only their number and times matter here.
 */
async function savedByPhone(capturedFps: number, stretch: number) {
  const truth = truthOf(clipParameters({ fps: capturedFps }));
  const frameTimesMs = truth.frames.map(({ timeMs }) => timeMs * stretch);
  const path = await writeScratch(folder, await makeClip({ frameTimesMs }));
  const taken = await stripClip(path, join(folder, `kept-${capturedFps}-${stretch}`));
  if (taken.problem !== null) throw new Error(taken.problem);
  return { marks: truth.events, frameTimesMs: taken.facts.frameTimesMs };
}

describe.each([
  [120, 4],
  [240, 4],
  [200, 5],
  [120, 6],
  [240, 8],
])("a clip recorded at %i a second and stretched %i times", (capturedFps, stretch) => {
  it("gives the delivery's true times within the error it prints, once its captured rate is set", async () => {
    const { marks, frameTimesMs } = await savedByPhone(capturedFps, stretch);
    const base = timeBaseOf({ frameTimesMs, capturedFps });
    const told = eventDurations(marks, base, frameTimesMs);
    expect(told).toHaveLength(4);
    for (const { from, to, duration } of told) {
      const trueMs = (EVENT_TIMES_S[to] - EVENT_TIMES_S[from]) * 1000;
      expect(Math.abs((duration.ms ?? Number.NaN) - trueMs)).toBeLessThanOrEqual(duration.errorMs ?? 0);
      expect(duration.errorMs).toBeCloseTo(1000 / capturedFps, 2);
    }
  });

  it("gives no time before that, and points a coach to the rate by contact and release", async () => {
    const { marks, frameTimesMs } = await savedByPhone(capturedFps, stretch);
    const base = timeBaseOf({ frameTimesMs, capturedFps: null });
    expect(base.kind).toBe("unknown");
    expect(eventDurations(marks, base, frameTimesMs).every(({ duration }) => duration.ms === null)).toBe(
      true,
    );
    const spots = { contact: marks.front_foot_contact, release: marks.ball_release };
    expect(likelyCapturedFps(frameTimesMs, spots)).toBe(capturedFps);
  });
});
