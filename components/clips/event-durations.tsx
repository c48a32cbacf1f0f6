import { useMemo } from "react";
import { eventDurations } from "@/server/domain/clips/event-durations";
import { durationInWords, timeBaseOf } from "@/server/domain/clips/time-base";
import type { DeliveryEvent } from "@/server/domain/mechanics/delivery";
import styles from "./event-durations.module.css";

/** What {@link EventDurations} takes. */
export interface EventDurationsProps {
  frameTimesMs: readonly number[];
  /** Frames a second as recorded; null while nobody has said. */
  capturedFps: number | null;
  marks: Partial<Record<DeliveryEvent, number>>;
}

/** A moment as the end of a span, where its whole name stands above already. */
const SHORT_WORDS: Record<DeliveryEvent, string> = {
  first_movement: "first movement",
  peak_knee_height: "peak knee",
  front_foot_contact: "contact",
  max_external_rotation: "external rotation",
  ball_release: "release",
  finish: "finish",
};

/** How long it took from each marked moment to the next: true time with its error, or frames. */
export function EventDurations({ frameTimesMs, capturedFps, marks }: EventDurationsProps) {
  const base = useMemo(() => timeBaseOf({ frameTimesMs, capturedFps }), [frameTimesMs, capturedFps]);
  const spans = eventDurations(marks, base, frameTimesMs);
  if (spans.length === 0) return null;
  return (
    <dl className={styles.spans} aria-label="Times between the moments">
      {spans.map(({ from, to, duration }) => (
        <div key={from} className={styles.span}>
          <dt>{`${SHORT_WORDS[from]} to ${SHORT_WORDS[to]}`}</dt>
          <dd>{durationInWords(duration)}</dd>
        </div>
      ))}
    </dl>
  );
}
