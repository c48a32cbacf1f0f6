"use client";

import Link from "next/link";
import { type KeyboardEvent, type PointerEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { placeOn, type TimeAxis } from "./time-axis";
import styles from "./time-line.module.css";
import { LEAST_PLOT_PX, TimeLineGrid, TimeLineNames } from "./time-line-ground";
import { TimeLineItems, TimeLineRing } from "./time-line-item";
import { itemInWords, type PlacedRow, placeRows } from "./time-line-layout";
import { entryItem, isMove, itemAfterKey, itemAt } from "./time-line-moves";
import type { TimeLineItem, TimeLineRow } from "./time-line-parts";
import { holding, zoomed } from "./time-window";
import { useDrawnWidth } from "./use-drawn-width";

/** What a {@link TimeLine} takes. */
export interface TimeLineProps {
  /** What is drawn; read out before anything else. */
  label: string;
  rows: readonly TimeLineRow[];
  items: readonly TimeLineItem[];
  /** What is in sight, within the whole. */
  axis: TimeAxis;
  whole: TimeAxis;
  /** Asked for by a key that narrows, widens or leads out of what is in sight. */
  onAxis: (axis: TimeAxis) => void;
  /** Follows an item that leads somewhere. */
  onOpen: (href: string) => void;
  /** Marked by a broken line when it lies on the axis; what is still so is drawn up to it. */
  today?: CalendarDay;
}

/** Room for the months under the rows. */
const AXIS_PX = 28;

const ZOOMS: Record<string, number> = { "+": 0.5, "=": 0.5, "-": 2 };

/**
 * Rows of spans, marks and bars on one axis of days. The whole drawing is one stop for the Tab key: arrows lead from item
 * to item, Enter follows one, plus and minus narrow and widen. What is in hand or pointed at stands in words below.
 */
export function TimeLine({ label, rows, items, axis, whole, onAxis, onOpen, today }: TimeLineProps) {
  const hatchId = `hatch${useId().replaceAll(/\W/g, "")}`;
  const scroll = useRef<HTMLDivElement>(null);
  const chart = useRef<SVGSVGElement>(null);
  const widthPx = useDrawnWidth(chart);
  const [activeId, setActiveId] = useState<string | null>(null);
  const placed = useMemo(
    () => placeRows(rows, items, { axis, today, widthPx }),
    [rows, items, axis, today, widthPx],
  );
  const all = useMemo(
    () => placeRows(rows, items, { axis: whole, today, widthPx }),
    [rows, items, whole, today, widthPx],
  );
  const found = inHand(placed, activeId);
  const active = items.find((item) => item.id === activeId);
  const heightPx = (placed.at(-1)?.topPx ?? 0) + (placed.at(-1)?.heightPx ?? 0);

  useEffect(() => {
    // The latest days are what one comes for; the earlier ones are a swipe away.
    scroll.current?.scrollTo({ left: scroll.current.scrollWidth });
  }, []);

  function take(id: string | null) {
    const item = items.find((each) => each.id === id);
    if (item === undefined) return;
    setActiveId(item.id);
    const day =
      item.startDay < axis.startDay && (item.endDay ?? axis.endDay) > axis.startDay
        ? axis.startDay
        : item.startDay;
    const next = holding(axis, whole, day);
    if (next !== axis) onAxis(next);
    reveal(scroll.current, placeOn(next, day), widthPx);
  }

  function press(event: KeyboardEvent) {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const act = actOf(event.key);
    if (act === null) return;
    event.preventDefault();
    act();
  }

  function actOf(key: string): (() => void) | null {
    const factor = ZOOMS[key];
    if (factor !== undefined) {
      return () => onAxis(zoomed(axis, whole, factor, active?.startDay ?? axis.endDay));
    }
    if (isMove(key)) return () => take(active ? itemAfterKey(all, active.id, key) : entry());
    if (key === "0") return () => onAxis(whole);
    if (key === "Escape" && active) return () => setActiveId(null);
    const href = active?.href;
    return key === "Enter" && href !== undefined ? () => onOpen(href) : null;
  }

  const entry = () => entryItem(placed) ?? entryItem(all);

  const pointed = (event: PointerEvent<SVGSVGElement> | React.MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return itemAt(placed, {
      xPx: event.clientX - box.left,
      yPx: event.clientY - box.top,
      widthPx: box.width,
    });
  };

  function click(event: React.MouseEvent<SVGSVGElement>) {
    const id = pointed(event);
    const item = items.find((each) => each.id === id);
    /* A finger cannot point without pressing: its first press reads out, the second opens. */
    if (item?.href && id === activeId) onOpen(item.href);
    else if (id !== null) setActiveId(id);
  }

  return (
    <figure className={styles.figure}>
      <div
        ref={scroll}
        className={styles.scroll}
        role="application"
        aria-label={`${label}. ${KEYS}`}
        {...TAB_STOP}
        onKeyDown={press}
      >
        <div className={styles.track}>
          <TimeLineNames rows={placed} heightPx={heightPx + AXIS_PX} />
          <div className={styles.plot}>
            <svg className={styles.spacer} width={LEAST_PLOT_PX} height="0" aria-hidden="true" />
            <svg
              ref={chart}
              className={styles.chart}
              height={heightPx + AXIS_PX}
              aria-hidden="true"
              data-opens={active?.href ? "" : undefined}
              onPointerMove={(event) => event.pointerType === "mouse" && setActiveId(pointed(event))}
              onClick={click}
            >
              <TimeLineGrid rows={placed} {...{ axis, today, heightPx, widthPx, hatchId }} />
              {found ? <TimeLineRing {...found} /> : null}
              <TimeLineItems rows={placed} axis={axis} hatchId={hatchId} />
            </svg>
          </div>
        </div>
      </div>
      <p className={styles.readout} aria-live="polite">
        {active ? (
          <>
            {rows.find(({ key }) => key === active.row)?.label}: {itemInWords(active)}
            {active.href ? <Link href={active.href}>Open it</Link> : null}
          </>
        ) : (
          <span className={styles.hint}>
            Point at anything to read it here, or go through it by the arrow keys.
          </span>
        )}
      </p>
    </figure>
  );
}

/* Worked by keys, and wider than a phone. */
const TAB_STOP = { tabIndex: 0 };

const KEYS = "Arrow keys go from point to point, Enter opens one, plus and minus show fewer or more days.";

function inHand(rows: readonly PlacedRow[], id: string | null) {
  for (const row of rows) {
    const placed = row.items.find(({ item }) => item.id === id);
    if (placed) return { row, placed };
  }
  return null;
}

/* On a phone the drawing is wider than what shows of it. */
function reveal(scroll: HTMLElement | null, share: number, widthPx: number) {
  if (scroll === null || scroll.scrollWidth <= scroll.clientWidth) return;
  const names = scroll.scrollWidth - widthPx;
  scroll.scrollTo({ left: names + share * widthPx - scroll.clientWidth / 2 - names / 2 });
}
