import type { CalendarDay } from "@/server/domain/time/calendar-day";
import { asPercent, placeOn, type TimeAxis, thinTicks } from "./time-axis";
import styles from "./time-line.module.css";
import type { PlacedRow } from "./time-line-layout";

/** A drawing is never narrower than this, so that a season scrolls on a phone. By eye, no source. */
export const LEAST_PLOT_PX = 560;

const NAMES_PX = 136;

/** The names of the rows, which stay in sight while the drawing scrolls. */
export function TimeLineNames({ rows, heightPx }: { rows: readonly PlacedRow[]; heightPx: number }) {
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

/** What a {@link TimeLineGrid} takes. */
export interface TimeLineGridProps {
  rows: readonly PlacedRow[];
  axis: TimeAxis;
  today: CalendarDay | undefined;
  heightPx: number;
  widthPx: number;
  hatchId: string;
}

/** The lines under the items: rows, months, today. */
export function TimeLineGrid({ rows, axis, today, heightPx, widthPx, hatchId }: TimeLineGridProps) {
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
      {thinTicks(axis, widthPx).map((tick) => (
        <svg
          key={tick.day}
          aria-hidden="true"
          x={asPercent(placeOn(axis, tick.day))}
          width="1"
          overflow="visible"
        >
          <line className={styles.rule} y1="0" y2={heightPx + 8} />
          <text className={styles.tick} x="5" y={heightPx + 20}>
            {tick.label}
          </text>
        </svg>
      ))}
      {isTodayOn ? (
        <svg aria-hidden="true" x={asPercent(placeOn(axis, today))} width="1" overflow="visible">
          <line className={styles.today} y1="0" y2={heightPx} />
        </svg>
      ) : null}
    </g>
  );
}
