"use client";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { type KeyboardEvent, useId, useState } from "react";
import { DayChart } from "@/components/charts/day-chart";
import type { TimeAxis } from "@/components/charts/time-axis";
import { roomAddress } from "@/components/reviews/room-address";
import type { CheckpointEvidence } from "@/server/api/evidence/checkpoint-shape";
import { JUDGEMENT_WORDS } from "@/server/domain/mechanics/judgement";
import { dayStep } from "./day-step";
import styles from "./evidence.module.css";
import { plotOf, type SeriesView } from "./plot-days";
import { dayReadOut, seriesName } from "./series-words";

/** What a {@link SeriesChart} takes. */
export interface SeriesChartProps {
  series: SeriesView;
  corrections: CheckpointEvidence["corrections"];
  axis: TimeAxis;
}

/**
 * A series over time: each day with its error, the spans of the corrections behind it. A day is read out by hovering or
 * by the arrow keys, and opened on its frame by a click or Enter.
 */
export function SeriesChart({ series, corrections, axis }: SeriesChartProps) {
  const router = useRouter();
  const hintId = useId();
  const [active, setActive] = useState(series.days.length - 1);
  const day = series.days[active];
  const address = addressOf(day);
  const open = (at: number) => {
    const to = addressOf(series.days[at]);
    if (to !== null) router.push(to);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") open(active);
    const next = dayStep(event.key, active, series.days.length);
    if (next === null) return;
    event.preventDefault();
    setActive(next);
  };
  return (
    <figure className={styles.figure}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and this is one drawing read by arrow keys */}
      <div
        className={styles.chart}
        role="group"
        aria-label={`${seriesName(series)}, day by day`}
        aria-describedby={hintId}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the arrow keys go from day to day within
        tabIndex={0}
        onKeyDown={onKeyDown}
      >
        <DayChart
          {...plotOf(series, corrections, axis)}
          {...{ axis, active }}
          steps={series.kind === "judgement" ? JUDGEMENT_WORDS : undefined}
          onActive={setActive}
          onOpen={open}
        />
      </div>
      <figcaption className={styles.readOut}>
        <span aria-live="polite">{day ? dayReadOut(day) : ""}</span>
        {address ? <Link href={address}>Open its frame</Link> : null}
      </figcaption>
      <p id={hintId} className={styles.hint}>
        Arrow keys go from day to day, Enter opens the frame. The line through a day is its error.
      </p>
    </figure>
  );
}

const addressOf = (day: SeriesView["days"][number] | undefined): string | null =>
  day?.place?.isKept ? roomAddress(day.place) : null;
