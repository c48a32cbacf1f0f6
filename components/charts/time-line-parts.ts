import type { CalendarDay } from "@/server/domain/time/calendar-day";
import type { TimeAxis } from "./time-axis";

/** How a span is drawn: outlined, hatched, filled or a thin line, so that its state shows without colour. */
export type SpanLook = "open" | "hatched" | "solid" | "thin";

/** What a mark is drawn as. */
export type MarkLook = "circle" | "diamond" | "square" | "crossed" | "stroke";

/** A stretch of a span that is drawn in a way of its own. */
export interface SpanPart {
  fromDay: CalendarDay;
  /** The first day it no longer is; null while it still is. */
  toDay: CalendarDay | null;
  look: SpanLook;
}

/** A shape on a span, on the day on which something happened to it. */
export interface SpanCap {
  day: CalendarDay;
  look: MarkLook;
}

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
  /** When it was so, where that is more than a first and a last day. */
  when?: string;
  href?: string;
  /** Default `open` for a span, `circle` for a mark. */
  look?: SpanLook | MarkLook;
  /** The size of a bar; bars of one row share its scale. */
  value?: number;
  /** Of a span that changed on the way; in its place `look` is not drawn. */
  parts?: readonly SpanPart[];
  caps?: readonly SpanCap[];
  /** Its label and state stand beside it, in room of their own. */
  isLabelled?: boolean;
}

/** One row of a time line. */
export interface TimeLineRow {
  key: string;
  label: string;
}

/** Where the words of an item stand: on it, after it or before it, from a share of the axis on. */
export interface PlacedWords {
  text: string;
  side: "on" | "after" | "before";
  /** The share of the axis that they begin at, or before it end at. */
  at: number;
  /** At most so wide. */
  widthPx: number;
}

/** An item and where it stands: its lane within the row, its ends as shares of the axis. */
export interface PlacedItem {
  item: TimeLineItem;
  lane: number;
  from: number;
  to: number;
  /** What it takes of its lane, with its words and shapes; as `from` and `to` where it has none. */
  taken: readonly [from: number, to: number];
  words: PlacedWords | null;
}

/** What rows are placed on. Without a day of today what is still so ends with the axis. */
export interface TimeLineGround {
  axis: TimeAxis;
  today?: CalendarDay | undefined;
  /** How wide the drawing is; words are placed by it. */
  widthPx: number;
}
