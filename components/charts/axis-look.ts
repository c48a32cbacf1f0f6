import { monthLabels, type WeekCounts } from "./week-rows";

/** How the words along every axis look. */
export const TICK = { fill: "var(--dusk)", fontSize: 12 } as const;

/** An axis of weeks, each month's name under its first. */
export function weekAxis(weeks: readonly Pick<WeekCounts, "weekOf">[]) {
  const labels = monthLabels(weeks);
  return {
    dataKey: "weekOf",
    interval: 0,
    tickFormatter: (weekOf: string) => labels.get(weekOf) ?? "",
    tick: TICK,
    tickLine: false,
    stroke: "var(--field)",
  } as const;
}

/** An axis of figures, at the side, without a line. */
export const FIGURE_AXIS = { tick: TICK, width: 40, axisLine: false, tickLine: false } as const;
