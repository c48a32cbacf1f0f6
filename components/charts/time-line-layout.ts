import { addDays } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { placeOn, type TimeAxis } from "./time-axis";
import { inLanes } from "./time-line-lanes";
import type { PlacedItem, TimeLineGround, TimeLineItem, TimeLineRow } from "./time-line-parts";

/** A row and what stands in it, earliest first. Heights in px. */
export interface PlacedRow {
  row: TimeLineRow;
  items: PlacedItem[];
  topPx: number;
  heightPx: number;
  /** The largest bar, at least 1. */
  maxValue: number;
}

/** Height of one lane of spans or marks. */
export const LANE_PX = 26;

/** Height of a row of bars. */
export const BAR_ROW_PX = 56;

/** Air above and below the lanes of a row. */
export const ROW_AIR_PX = 5;

/**
 * Rows under one another and their items in lanes: spans that overlap stand one lane lower, the earliest uppermost, and
 * so do those whose words would. Marks take no room. What is still so ends with `today`. Items that lie outside the axis
 * or name no row are left out.
 */
export function placeRows(
  rows: readonly TimeLineRow[],
  items: readonly TimeLineItem[],
  ground: TimeLineGround,
): PlacedRow[] {
  const openEnd = ground.today === undefined ? 1 : placeOn(ground.axis, addDays(ground.today, 1));
  let topPx = 0;
  return rows.map((row) => {
    const own = items.filter((item) => item.row === row.key && isOn(ground.axis, item)).sort(byStart);
    const placed = inLanes(own, ground, openEnd);
    const hasBars = placed.some(({ item }) => item.kind === "bar");
    const lanes = placed.reduce((most, { lane }) => Math.max(most, lane + 1), 1);
    const heightPx = (hasBars ? BAR_ROW_PX : lanes * LANE_PX) + 2 * ROW_AIR_PX;
    const maxValue = placed.reduce((most, { item }) => Math.max(most, item.value ?? 0), 1);
    topPx += heightPx;
    return { row, items: placed, topPx: topPx - heightPx, heightPx, maxValue };
  });
}

/** An item in one sentence: "Front knee, showing, from Mon 2 Nov 2026 until Tue 1 Dec 2026". */
export function itemInWords(item: TimeLineItem): string {
  const when = item.when ?? whenInWords(item);
  return [item.label, item.state, when].filter((part) => part !== "").join(", ");
}

/** When an item was so: its day, its week, or from when until when. */
export function whenInWords({ kind, startDay, endDay }: TimeLineItem): string {
  const from = dayInWords(startDay, { withYear: true });
  if (kind === "mark") return from;
  if (kind === "bar") return `week of ${from}`;
  if (endDay === null) return `since ${from}`;
  return `from ${from} until ${dayInWords(endDay, { withYear: true })}`;
}

/** Whether any of an item lies on an axis. */
export function isOn(axis: TimeAxis, item: TimeLineItem): boolean {
  if (item.startDay >= axis.endDay) return false;
  if (item.kind === "mark") return item.startDay >= axis.startDay;
  return item.endDay === null || item.endDay > axis.startDay;
}

function byStart(a: TimeLineItem, b: TimeLineItem): number {
  if (a.startDay !== b.startDay) return a.startDay < b.startDay ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}
