import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkTime } from "@/server/domain/calendar/check-time";
import { claimsOf } from "@/server/domain/calendar/claims";
import { findTimes } from "@/server/domain/calendar/slot-finder";
import { randomSearch, SPAN_STARTS } from "./random-academy";
import { slowTimes } from "./slow-finder";

const RUNS = { numRuns: 200, seed: 20261124 };
const FEWER_RUNS = { numRuns: 80, seed: 20261125 };

/** A slow search on a busy machine: ample, and not a measure of anything. */
const TIMEOUT_MS = 120_000;

describe("the finder against a search of every minute", () => {
  it(
    "finds the same times in the same order, and refuses the same days, over clock changes and midnights",
    () => {
      let timesSeen = 0;
      let refusedSeen = 0;
      const spans = new Set<string>();
      fc.assert(
        fc.property(randomSearch, ({ search, spanStart }) => {
          const found = findTimes(search);
          const slow = slowTimes(search, spanStart);
          const plain = found.times.map(({ room: _room, endsAtMs: _end, reasons, ...time }) => ({
            ...time,
            isFull: reasons.includes("full_room"),
            isSameCoach: reasons.includes("same_coach"),
            isWished: reasons.includes("family_wish"),
          }));
          expect(plain).toEqual(slow.times);
          const refused = found.refused.map(({ day, dryWorkFits }) => [day, dryWorkFits]);
          expect(refused).toEqual([...slow.refused].sort());
          timesSeen += found.times.length;
          refusedSeen += found.refused.length;
          if (found.times.length > 0) spans.add(spanStart);
        }),
        RUNS,
      );
      // The check would be empty if the random academies were never open.
      expect(timesSeen).toBeGreaterThan(1500);
      expect(refusedSeen).toBeGreaterThan(100);
      expect(spans.size).toBe(SPAN_STARTS.length);
    },
    TIMEOUT_MS,
  );

  it(
    "gives only times that can be booked as they are, or with fewer pitches where it says so",
    () => {
      let asked = 0;
      fc.assert(
        fc.property(randomSearch, ({ search }) => {
          for (const time of findTimes({ ...search, limit: 20 }).times) {
            const durationMin = (time.endsAtMs - time.startsAtMs) / 60_000;
            const athletes = search.athleteIds.map((id) => ({
              ...{ id, plannedPitches: search.plannedPitches, bornOn: "2000-01-01", guardianIds: [] },
            }));
            const proposed = { kind: search.kind, ...time, durationMin, athletes, secondAdult: null };
            const refusals = checkTime(proposed, search).map(({ reason }) => reason);
            expect(refusals).toEqual(time.reasons.includes("fewer_pitches") ? ["too_many_pitches"] : []);
            asked += 1;
          }
        }),
        FEWER_RUNS,
      );
      expect(asked).toBeGreaterThan(300);
    },
    TIMEOUT_MS,
  );

  it(
    "does not give a time again once it is booked, whichever it was",
    () => {
      fc.assert(
        fc.property(randomSearch, fc.nat(), ({ search }, pick) => {
          const { times } = findTimes(search);
          const booked = times[pick % Math.max(1, times.length)];
          if (booked === undefined) return;
          const claims = claimsOf({ ...booked, athleteIds: search.athleteIds, secondAdult: null });
          const after = findTimes({
            ...search,
            busy: [...search.busy, ...claims],
            limit: 10_000,
            limitPerDay: 10_000,
          });
          for (const time of after.times) {
            expect(time.startsAtMs >= booked.endsAtMs || time.endsAtMs <= booked.startsAtMs).toBe(true);
          }
        }),
        FEWER_RUNS,
      );
    },
    TIMEOUT_MS,
  );
});
