import { addDays, type CalendarDay } from "@/server/domain/time/calendar-day";
import { dayInWords } from "@/server/domain/time/words";
import { placeOn, type TimeAxis } from "./time-axis";

/** How a span is drawn: outlined, hatched or filled, so that its state shows without colour. */
export type SpanLook = "open" | "hatched" | "solid";

/** What a mark is drawn as. */
export type MarkLook = "circle" | "diamond" | "square" | "crossed" | "stroke";

/** One thing on a time line. */
export interface TimeLineItem {
  id: string;
  /** The key of the row it stands in. */
  row: string;
  kind: "span" | "mark" | "bar";
  startDay: CalendarDay;
  /** The first day it no longer is; null for a mark, and for a span that is still so. */
  endDay: CalendarDay | null;
  /** What it is, e.g. "Front knee". */
  label: string;
  /** How it stands, in a word; empty when there is nothing to say. */
  state: string;
  href?: string;
  /** Default `open` for a span, `circle` for a mark. */
  look?: SpanLook | MarkLook;
  /** The size of a bar; bars of one row share its scale. */
  value?: number;
}

/** One row of a time line. */
export interface TimeLineRow {
  key: string;
  label: string;
}

/** An item and where it stands: its lane within the row, its ends as shares of the axis. */
export interface PlacedItem {
  item: TimeLineItem;
  lane: number;
  from: number;
  to: number;
}

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
 * Rows under one another and their items in lanes: spans that overlap stand one lane lower, the earliest uppermost.
 * Marks take no room. What is still so ends with `today`, or with the axis when no today is given. Items that lie
 * outside the axis or name no row are left out.
 */
export function placeRows(
  rows: readonly TimeLineRow[],
  items: readonly TimeLineItem[],
  axis: TimeAxis,
  today?: CalendarDay,
): PlacedRow[] {
  const openEnd = today === undefined ? 1 : placeOn(axis, addDays(today, 1));
  let topPx = 0;
  return rows.map((row) => {
    const placed = placeInLanes(
      items.filter((item) => item.row === row.key && isOn(axis, item)),
      axis,
      openEnd,
    );
    const hasBars = placed.some(({ item }) => item.kind === "bar");
    const lanes = 1 + Math.max(0, ...placed.map(({ lane }) => lane));
    const heightPx = (hasBars ? BAR_ROW_PX : lanes * LANE_PX) + 2 * ROW_AIR_PX;
    const maxValue = Math.max(1, ...placed.map(({ item }) => item.value ?? 0));
    topPx += heightPx;
    return { row, items: placed, topPx: topPx - heightPx, heightPx, maxValue };
  });
}

/** An item in one sentence: "Front knee, showing, from Mon 2 Nov 2026 until Tue 1 Dec 2026". */
export function itemInWords(item: TimeLineItem): string {
  const from = dayInWords(item.startDay, { withYear: true });
  return [item.label, item.state, whenInWords(item, from)].filter((part) => part !== "").join(", ");
}

function whenInWords(item: TimeLineItem, from: string): string {
  if (item.kind === "mark") return from;
  if (item.kind === "bar") return `week of ${from}`;
  if (item.endDay === null) return `since ${from}`;
  return `from ${from} until ${dayInWords(item.endDay, { withYear: true })}`;
}

function isOn(axis: TimeAxis, item: TimeLineItem): boolean {
  if (item.startDay >= axis.endDay) return false;
  if (item.kind === "mark") return item.startDay >= axis.startDay;
  return item.endDay === null || item.endDay > axis.startDay;
}

function placeInLanes(items: readonly TimeLineItem[], axis: TimeAxis, openEnd: number): PlacedItem[] {
  const laneEnds: number[] = [];
  return [...items]
    .sort((a, b) => (a.startDay === b.startDay ? a.id.localeCompare(b.id) : a.startDay < b.startDay ? -1 : 1))
    .map((item) => {
      const from = placeOn(axis, item.startDay);
      if (item.kind === "mark") return { item, lane: 0, from, to: from };
      const to = item.endDay === null ? Math.max(from, openEnd) : placeOn(axis, item.endDay);
      if (item.kind === "bar") return { item, lane: 0, from, to };
      const free = laneEnds.findIndex((end) => end <= from);
      const lane = free === -1 ? laneEnds.length : free;
      laneEnds[lane] = to;
      return { item, lane, from, to };
    });
}
