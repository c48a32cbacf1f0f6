import { useState } from "react";
import { daysBetween } from "@/server/domain/time/calendar-day";
import { TICK } from "./axis-look";
import { daysOn, type TimeAxis, thinTicks } from "./time-axis";

/** What a chart is taken for until it is measured. */
const UNMEASURED_PX = 640;

/**
 * An axis of days since its first, with as many months in words as there is room for.
 * @param besidePx what of the chart's width is not the plot's
 * @returns `onResize` for the container that measures the chart, `days` for its axis
 */
export function useDayAxis(axis: TimeAxis, besidePx: number) {
  const [widthPx, setWidthPx] = useState(UNMEASURED_PX);
  const ticks = thinTicks(axis, Math.max(1, widthPx - besidePx));
  const labels = new Map(ticks.map(({ day, label }) => [daysBetween(axis.startDay, day), label]));
  const days = {
    dataKey: "offset",
    type: "number",
    domain: [0, daysOn(axis)] as [number, number],
    ticks: [...labels.keys()],
    tickFormatter: (offset: number) => labels.get(offset) ?? "",
    tick: TICK,
    tickMargin: 6,
    interval: 0,
    stroke: "var(--field)",
  } as const;
  return { onResize: (width: number) => setWidthPx(width), days };
}
