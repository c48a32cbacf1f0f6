"use client";

import type { ReactNode } from "react";
import { CartesianGrid, Line, LineChart, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import { dayInWords } from "@/server/domain/time/words";
import { FIGURE_AXIS, weekAxis } from "./axis-look";
import styles from "./chart.module.css";
import { FigureTable } from "./figure-table";
import type { WeekFigures } from "./week-rows";

/** One line of a {@link WeekLines}. */
export interface WeekLine {
  /** Which figure of a week it draws. */
  key: string;
  label: string;
}

/** What a {@link WeekLines} takes. */
export interface WeekLinesProps {
  title: string;
  weeks: readonly WeekFigures[];
  /** At most three, drawn solid, dashed and dotted. */
  lines: readonly WeekLine[];
  /** A figure as it is written. */
  inWords: (figure: number | null) => string;
  /** The same figures as a `Table`. */
  table: ReactNode;
}

const DASHES = ["0", "7 4", "0.1 5"];

/** Figures by week as lines that differ by their dash; a week without a figure leaves a gap. */
export function WeekLines({ title, weeks, lines, inWords, table }: WeekLinesProps) {
  return (
    <figure className={styles.figure} aria-label={title}>
      <figcaption className={styles.title}>{title}</figcaption>
      <div className={styles.chart}>
        <ResponsiveContainer width="100%" height="100%">
          <LineChart data={[...weeks]} margin={{ top: 10, right: 8, bottom: 0, left: 0 }}>
            <CartesianGrid vertical={false} stroke="var(--line)" />
            <XAxis {...weekAxis(weeks)} />
            <YAxis {...FIGURE_AXIS} domain={[0, "auto"]} />
            <Tooltip
              cursor={{ stroke: "var(--field)" }}
              isAnimationActive={false}
              content={({ payload }) => (
                <WeekTip week={payload?.[0]?.payload} lines={lines} inWords={inWords} />
              )}
            />
            {lines.map(({ key, label }, index) => (
              <Line
                key={key}
                name={label}
                dataKey={(week: WeekFigures) => week.figures[key] ?? null}
                type="linear"
                stroke="var(--ink)"
                strokeWidth={index === 2 ? 2.5 : 1.5}
                strokeDasharray={dashOf(index)}
                strokeLinecap={index === 2 ? "round" : "butt"}
                dot={false}
                isAnimationActive={false}
              />
            ))}
          </LineChart>
        </ResponsiveContainer>
      </div>
      <Key lines={lines} />
      <FigureTable>{table}</FigureTable>
    </figure>
  );
}

const dashOf = (index: number) => DASHES[index % DASHES.length] ?? "0";

function Key({ lines }: Pick<WeekLinesProps, "lines">) {
  return (
    <ul className={styles.key}>
      {lines.map(({ key, label }, index) => (
        <li key={key}>
          <svg width="32" height="8" viewBox="0 0 32 8" aria-hidden="true">
            <path
              d="M1 4h30"
              stroke="var(--ink)"
              strokeWidth={index === 2 ? 2.5 : 1.5}
              strokeDasharray={dashOf(index)}
              strokeLinecap={index === 2 ? "round" : "butt"}
            />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}

interface WeekTipProps extends Pick<WeekLinesProps, "lines" | "inWords"> {
  week: WeekFigures | undefined;
}

function WeekTip({ week, lines, inWords }: WeekTipProps) {
  if (week === undefined) return null;
  return (
    <div className={styles.tip}>
      <b>Week of {dayInWords(week.weekOf)}</b>
      {lines.map(({ key, label }) => (
        <div key={key}>
          {label}: {inWords(week.figures[key] ?? null)}
        </div>
      ))}
    </div>
  );
}
