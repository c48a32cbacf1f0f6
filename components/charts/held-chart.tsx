"use client";

import type { ReactNode } from "react";
import { CartesianGrid, Line, LineChart, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import { FIGURE_AXIS, TICK } from "./axis-look";
import styles from "./chart.module.css";
import { FigureTable } from "./figure-table";
import { dayTicks, type HeldPoint, heldRows } from "./held-rows";

/** What a {@link HeldChart} takes. */
export interface HeldChartProps {
  title: string;
  points: readonly HeldPoint[];
  /** How far it is drawn: the longest that one was watched, in days. */
  longestDays: number;
  /** The same figures as a `Table`. */
  table: ReactNode;
}

const LINES = [
  { key: "share", label: "Share that held", dash: "0", width: 2 },
  { key: "upper", label: "Its interval at 95 %", dash: "2 4", width: 1.25 },
  { key: "lower", label: null, dash: "2 4", width: 1.25 },
] as const;

/** The share that held by the days since it was given, in steps, with its interval as two dotted stairs. */
export function HeldChart({ title, points, longestDays, table }: HeldChartProps) {
  return (
    <figure className={styles.figure} aria-label={title}>
      <figcaption className={styles.title}>{title}</figcaption>
      <div className={styles.chart}>
        <ResponsiveContainer width="100%" height="100%">
          <LineChart data={heldRows(points, longestDays)} margin={{ top: 10, right: 16, bottom: 4, left: 0 }}>
            <CartesianGrid vertical={false} stroke="var(--line)" />
            <XAxis
              dataKey="days"
              type="number"
              domain={[0, Math.max(1, longestDays)]}
              ticks={dayTicks(Math.max(1, longestDays))}
              tickFormatter={(days: number) => `${days} d`}
              tick={TICK}
              tickMargin={6}
              stroke="var(--field)"
            />
            <YAxis
              {...FIGURE_AXIS}
              width={48}
              domain={[0, 1]}
              ticks={[0, 0.25, 0.5, 0.75, 1]}
              tickFormatter={percent}
            />
            <Tooltip
              cursor={{ stroke: "var(--field)" }}
              isAnimationActive={false}
              content={({ payload }) => <HeldTip point={payload?.[0]?.payload} />}
            />
            {LINES.map(({ key, dash, width }) => (
              <Line
                key={key}
                dataKey={key}
                type="stepAfter"
                stroke={key === "share" ? "var(--ink)" : "var(--dusk)"}
                strokeWidth={width}
                strokeDasharray={dash}
                dot={false}
                activeDot={false}
                isAnimationActive={false}
              />
            ))}
          </LineChart>
        </ResponsiveContainer>
      </div>
      <ul className={styles.key}>
        {LINES.map(({ key, label, dash, width }) =>
          label === null ? null : (
            <li key={key}>
              <svg width="32" height="8" viewBox="0 0 32 8" aria-hidden="true">
                <path d="M0 4h32" stroke="var(--ink)" strokeWidth={width} strokeDasharray={dash} />
              </svg>
              {label}
            </li>
          ),
        )}
      </ul>
      <FigureTable>{table}</FigureTable>
    </figure>
  );
}

function HeldTip({ point }: { point: HeldPoint | undefined }) {
  if (point === undefined) return null;
  return (
    <div className={styles.tip}>
      <b>{point.days === 1 ? "1 day" : `${point.days} days`}</b>
      {percent(point.share)} held
    </div>
  );
}

const percent = (share: number) => `${Math.round(share * 100)} %`;
