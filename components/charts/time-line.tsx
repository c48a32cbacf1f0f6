"use client";

import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { asPercent, daysOn, monthTicks, placeOn, type TimeAxis } from "./time-axis";
import styles from "./time-line.module.css";
import { TimeLineMark } from "./time-line-item";
import {
  itemInWords,
  type PlacedRow,
  placeRows,
  type TimeLineItem,
  type TimeLineRow,
} from "./time-line-layout";
import { entryItem, itemAfterKey } from "./time-line-moves";

/** What a {@link TimeLine} takes. */
export interface TimeLineProps {
  /** What is drawn; read out before its items. */
  label: string;
  rows: readonly TimeLineRow[];
  items: readonly TimeLineItem[];
  axis: TimeAxis;
  /** Marked by a broken line when it lies on the axis; what is still so is drawn up to it. */
  today?: CalendarDay;
}

/** Room for the months under the rows. */
const AXIS_PX = 28;

/** A day is never narrower than this, so that a long season scrolls on a phone; a trial by eye, no source. */
const LEAST_DAY_PX = 3;

const NAMES_PX = 136;

/**
 * Rows of spans, marks and bars on one axis of days. One stop for the Tab key, arrows from item to item, Enter
 * follows an item that leads somewhere; what is pointed at or focused stands in words below.
 */
export function TimeLine({ label, rows, items, axis, today }: TimeLineProps) {
  const hatchId = `hatch${useId().replaceAll(/\W/g, "")}`;
  const scroll = useRef<HTMLDivElement>(null);
  const [activeId, setActiveId] = useState<string | null>(null);
  const placed = placeRows(rows, items, axis, today);
  const active = items.find((item) => item.id === activeId);
  const entryId = active ? active.id : entryItem(placed);
  const heightPx = (placed.at(-1)?.topPx ?? 0) + (placed.at(-1)?.heightPx ?? 0);

  useEffect(() => {
    // The latest days are what one comes for; the earlier ones are a swipe away.
    scroll.current?.scrollTo({ left: scroll.current.scrollWidth });
  }, []);

  function move(event: KeyboardEvent<SVGSVGElement>) {
    const next = entryId === null ? null : itemAfterKey(placed, entryId, event.key);
    if (next === null) return;
    event.preventDefault();
    const target = event.currentTarget.querySelector<SVGElement>(`[data-item="${CSS.escape(next)}"]`);
    target?.focus();
  }

  return (
    <figure className={styles.figure}>
      <div ref={scroll} className={styles.scroll}>
        <div className={styles.track}>
          <Names rows={placed} heightPx={heightPx + AXIS_PX} />
          <div className={styles.plot}>
            <svg
              className={styles.spacer}
              width={daysOn(axis) * LEAST_DAY_PX}
              height="0"
              aria-hidden="true"
            />
            {/* biome-ignore lint/a11y/useSemanticElements: a drawing has no fieldset */}
            <svg
              className={styles.chart}
              height={heightPx + AXIS_PX}
              role="group"
              aria-label={`${label}. Arrow keys move from item to item.`}
              onKeyDown={move}
              onPointerLeave={() => setActiveId(null)}
            >
              <Ground rows={placed} axis={axis} today={today} heightPx={heightPx} hatchId={hatchId} />
              {placed.flatMap((row) =>
                row.items.map((each) => (
                  <TimeLineMark
                    key={each.item.id}
                    placed={each}
                    row={row}
                    hatchId={hatchId}
                    isEntry={each.item.id === entryId}
                    isActive={each.item.id === activeId}
                    onActive={setActiveId}
                  />
                )),
              )}
            </svg>
          </div>
        </div>
      </div>
      <p className={styles.readout} aria-live="polite">
        {active ? (
          itemInWords(active)
        ) : (
          <span className={styles.hint}>Point at an item to read it here.</span>
        )}
      </p>
    </figure>
  );
}

function Names({ rows, heightPx }: { rows: readonly PlacedRow[]; heightPx: number }) {
  return (
    <svg className={styles.names} width={NAMES_PX} height={heightPx} aria-hidden="true">
      {rows.map(({ row, topPx, heightPx: rowPx }) => (
        <g key={row.key}>
          <foreignObject x="0" y={topPx} width="100%" height={rowPx}>
            <div className={styles.name}>
              <span>{row.label}</span>
            </div>
          </foreignObject>
          <line className={styles.rule} x1="0" x2="100%" y1={topPx + rowPx} y2={topPx + rowPx} />
        </g>
      ))}
    </svg>
  );
}

interface GroundProps {
  rows: readonly PlacedRow[];
  axis: TimeAxis;
  today: CalendarDay | undefined;
  heightPx: number;
  hatchId: string;
}

function Ground({ rows, axis, today, heightPx, hatchId }: GroundProps) {
  const isTodayOn = today !== undefined && today >= axis.startDay && today < axis.endDay;
  return (
    <g>
      <defs>
        <pattern
          id={hatchId}
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path className={styles.hatchLine} d="M0 0v6" />
        </pattern>
      </defs>
      {rows.map(({ row, topPx, heightPx: rowPx }) => (
        <line key={row.key} className={styles.rule} x1="0" x2="100%" y1={topPx + rowPx} y2={topPx + rowPx} />
      ))}
      {monthTicks(axis).map((tick) => (
        <svg
          key={tick.day}
          x={asPercent(placeOn(axis, tick.day))}
          width="1"
          overflow="visible"
          aria-hidden="true"
        >
          <line className={styles.rule} y1="0" y2={heightPx + 8} />
          <text className={styles.tick} x="5" y={heightPx + 20}>
            {tick.label}
          </text>
        </svg>
      ))}
      {isTodayOn ? (
        <svg x={asPercent(placeOn(axis, today))} width="1" overflow="visible" aria-hidden="true">
          <line className={styles.today} y1="0" y2={heightPx} />
        </svg>
      ) : null}
    </g>
  );
}
