import { DELIVERY_EVENTS, type DeliveryEvent, isApproximate } from "@/server/domain/mechanics/delivery";
import { type Duration, durationBetween, type TimeBase } from "./time-base";

/** How long it took from one marked moment to the next. */
export interface EventDuration {
  from: DeliveryEvent;
  to: DeliveryEvent;
  duration: Duration;
}

/**
 * The times between the marked moments of a delivery, each to the next that is marked. A moment that is only
 * approximate bounds none: its frame is not sure, so the half frame of error would claim too much. Fewer than two
 * marks give none.
 */
export function eventDurations(
  marks: Partial<Record<DeliveryEvent, number>>,
  base: TimeBase,
  frameTimesMs: readonly number[],
): EventDuration[] {
  const marked = DELIVERY_EVENTS.flatMap((event) => {
    const frame = isApproximate(event) ? undefined : marks[event];
    return frame === undefined ? [] : [{ event, frame }];
  });
  return marked.flatMap((to, index) => {
    const from = marked[index - 1];
    if (!from) return [];
    const duration = durationBetween(base, frameTimesMs, from.frame, to.frame);
    return [{ from: from.event, to: to.event, duration }];
  });
}
