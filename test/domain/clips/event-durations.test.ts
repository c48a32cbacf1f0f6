import { describe, expect, it } from "vitest";
import { eventDurations } from "@/server/domain/clips/event-durations";
import { timeBaseOf } from "@/server/domain/clips/time-base";

const frameTimesMs = Array.from({ length: 200 }, (_, at) => (at * 1000) / 30);
const base = timeBaseOf({ frameTimesMs, capturedFps: 240 });
const told = (marks: Parameters<typeof eventDurations>[0], by = base) =>
  eventDurations(marks, by, frameTimesMs).map(({ from, to, duration }) => [
    from,
    to,
    duration.frames,
    duration.ms === null ? null : Math.round(duration.ms),
  ]);

describe("the times between the moments of a delivery", () => {
  it("go from each marked moment to the next, by the captured rate", () => {
    const marks = {
      first_movement: 0,
      peak_knee_height: 48,
      front_foot_contact: 120,
      ball_release: 156,
      finish: 180,
    };
    expect(told(marks)).toEqual([
      ["first_movement", "peak_knee_height", 48, 200],
      ["peak_knee_height", "front_foot_contact", 72, 300],
      ["front_foot_contact", "ball_release", 36, 150],
      ["ball_release", "finish", 24, 100],
    ]);
  });

  it("never stop at maximum external rotation, whose frame is not sure", () => {
    const marks = { front_foot_contact: 120, max_external_rotation: 150, ball_release: 156 };
    expect(told(marks)).toEqual([["front_foot_contact", "ball_release", 36, 150]]);
  });

  it("reach over a moment that is not marked", () => {
    expect(told({ peak_knee_height: 48, ball_release: 156 })).toEqual([
      ["peak_knee_height", "ball_release", 108, 450],
    ]);
  });

  it("are frames alone while the captured rate is unknown", () => {
    const unknown = timeBaseOf({ frameTimesMs, capturedFps: null });
    expect(told({ front_foot_contact: 120, ball_release: 156 }, unknown)).toEqual([
      ["front_foot_contact", "ball_release", 36, null],
    ]);
  });

  it.each([{}, { ball_release: 5 }, { max_external_rotation: 3, ball_release: 5 }])(
    "are none for %o",
    (marks) => {
      expect(told(marks)).toEqual([]);
    },
  );
});
