import rows from "./queue.module.css";
import { placeOnQueue, type QueueAxis } from "./queue-axis";
import styles from "./queue-track.module.css";

/** What a {@link QueueTrack} takes. Instants in epoch milliseconds. */
export interface QueueTrackProps {
  axis: QueueAxis;
  dueAtMs: number;
  estimateMin: number;
  /** Nobody has it yet: the line is broken. */
  isFree: boolean;
}

const percent = (share: number) => `${Math.round(share * 10_000) / 100}%`;
const MINUTE_MS = 60_000;

/**
 * One round on the axis all rows share: a line from now to its due, thick over the time the work is likely to take, so
 * that where the thick part begins is the latest start. What is late is a heavy line from its due to now.
 */
export function QueueTrack({ axis, dueAtMs, estimateMin, isFree }: QueueTrackProps) {
  const at = (ms: number) => percent(placeOnQueue(axis, ms));
  const isLate = dueAtMs < axis.nowMs;
  const latestStartMs = Math.max(axis.nowMs, dueAtMs - estimateMin * MINUTE_MS);
  const due = at(dueAtMs);
  return (
    <div className={rows.track}>
      <svg className={styles.drawing} aria-hidden="true">
        {axis.ticks.map((tick) => (
          <line
            key={tick.atMs}
            className={styles.tick}
            x1={at(tick.atMs)}
            x2={at(tick.atMs)}
            y1="0"
            y2="100%"
          />
        ))}
        <line className={styles.now} x1={at(axis.nowMs)} x2={at(axis.nowMs)} y1="0" y2="100%" />
        {isLate ? (
          <line className={styles.late} x1={due} x2={at(axis.nowMs)} y1="50%" y2="50%" />
        ) : (
          <>
            <line
              className={isFree ? styles.free : styles.held}
              x1={at(axis.nowMs)}
              x2={due}
              y1="50%"
              y2="50%"
            />
            <line className={styles.work} x1={at(latestStartMs)} x2={due} y1="50%" y2="50%" />
          </>
        )}
        <svg x={due} y="50%" overflow="visible" aria-hidden="true">
          <path className={styles.due} d="M0 -9V9M-4 13L0 8L4 13Z" />
        </svg>
      </svg>
    </div>
  );
}

/** The names of the ticks above the rows, and now. */
export function QueueTicks({ axis }: { axis: QueueAxis }) {
  const nowShare = placeOnQueue(axis, axis.nowMs);
  const isClear = (atMs: number) => Math.abs(placeOnQueue(axis, atMs) - nowShare) > 0.09;
  return (
    <svg className={rows.ticks} aria-hidden="true">
      <text className={styles.nowName} x={percent(nowShare)} y="14">
        now
      </text>
      {axis.ticks
        .filter((tick) => isClear(tick.atMs))
        .map((tick) => (
          <text key={tick.atMs} className={styles.tickName} x={percent(placeOnQueue(axis, tick.atMs))} y="14">
            {tick.label}
          </text>
        ))}
    </svg>
  );
}
