"use client";

import type { ReactNode } from "react";
import { CartesianGrid, Line, LineChart, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import { dayInWords } from "@/server/domain/time/words";
import { TICK } from "./axis-look";
import styles from "./chart.module.css";
import { FigureTable } from "./figure-table";
import { type ScoreRow, type ScoreSeries, scoreRows } from "./score-rows";
import type { TimeAxis } from "./time-axis";
import { useDayAxis } from "./use-day-axis";

/** What a {@link ScoreChart} takes. */
export interface ScoreChartProps {
  title: string;
  series: readonly ScoreSeries[];
  axis: TimeAxis;
  /** The scale's words from 0 up, e.g. absent, slight, mostly, clear. */
  words: readonly string[];
  /** The same judgements as a `Table`. */
  table: ReactNode;
}

/** Shapes and dashes by series, so that they differ without colour; a fifth series begins again. */
const POINTS = [
  "M0-5a5 5 0 1 1 0 10a5 5 0 0 1 0-10",
  "M-4.5-4.5h9v9h-9z",
  "M0-6.5L6.5 0L0 6.5L-6.5 0z",
  "M0-6L6 5H-6z",
];
const DASHES = ["0", "5 4", "1 4", "8 3 1 3"];
const FILLS = ["var(--ink)", "var(--ground)", "var(--ground)", "var(--ink)"];

const style = (index: number) => ({
  path: POINTS[index % POINTS.length] ?? "",
  dash: DASHES[index % DASHES.length] ?? "0",
  fill: FILLS[index % FILLS.length] ?? "var(--ink)",
});

const MARGIN = { top: 10, right: 16, bottom: 0, left: 0 };

/** The room of the scale's words. */
const SCALE_PX = 64;

/** Judgements in steps over time: a point where one was made, a stair between them, the steps in words. */
export function ScoreChart({ title, series, axis, words, table }: ScoreChartProps) {
  const { onResize, days } = useDayAxis(axis, SCALE_PX + MARGIN.right);
  return (
    <figure className={styles.figure} aria-label={title}>
      <figcaption className={styles.title}>{title}</figcaption>
      <div className={styles.chart}>
        <ResponsiveContainer width="100%" height="100%" onResize={onResize}>
          <LineChart data={scoreRows(series, axis)} margin={MARGIN}>
            <CartesianGrid vertical={false} syncWithTicks stroke="var(--line)" />
            <XAxis {...days} allowDuplicatedCategory={false} />
            <YAxis
              type="number"
              domain={[0, words.length - 1]}
              ticks={words.map((_, step) => step)}
              tickFormatter={(step: number) => words[step] ?? ""}
              tick={TICK}
              padding={{ top: 6, bottom: 14 }}
              width={SCALE_PX}
              axisLine={false}
              tickLine={false}
            />
            <Tooltip
              cursor={{ stroke: "var(--field)" }}
              isAnimationActive={false}
              content={({ payload }) => (
                <ScoreTip row={payload?.[0]?.payload} series={series} words={words} />
              )}
            />
            {series.map(({ name }, index) => (
              <Line
                key={name}
                name={name}
                dataKey={(row: ScoreRow) => (row.series === index ? row.score : null)}
                type="stepAfter"
                stroke="var(--dusk)"
                strokeWidth={1.25}
                strokeDasharray={style(index).dash}
                connectNulls
                isAnimationActive={false}
                dot={({ cx, cy, payload }) => (
                  <Point key={`${cx} ${cy} ${payload?.day}`} cx={cx} cy={cy} index={index} />
                )}
                activeDot={false}
              />
            ))}
          </LineChart>
        </ResponsiveContainer>
      </div>
      {series.length > 1 ? <Key series={series} /> : null}
      <FigureTable>{table}</FigureTable>
    </figure>
  );
}

function Point({ cx, cy, index }: { cx?: number | undefined; cy?: number | undefined; index: number }) {
  if (cx === undefined || cy === undefined || Number.isNaN(cy) || cy === null) return null;
  const { path, fill } = style(index);
  return (
    <path d={path} transform={`translate(${cx} ${cy})`} fill={fill} stroke="var(--ink)" strokeWidth={1.25} />
  );
}

function Key({ series }: { series: readonly ScoreSeries[] }) {
  return (
    <ul className={styles.key}>
      {series.map(({ name }, index) => (
        <li key={name}>
          <svg width="26" height="14" viewBox="-13 -7 26 14" aria-hidden="true">
            <path d="M-13 0h26" stroke="var(--dusk)" strokeDasharray={style(index).dash} />
            <path d={style(index).path} fill={style(index).fill} stroke="var(--ink)" strokeWidth="1.25" />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}

interface ScoreTipProps {
  row: ScoreRow | undefined;
  series: readonly ScoreSeries[];
  words: readonly string[];
}

function ScoreTip({ row, series, words }: ScoreTipProps) {
  if (row === undefined) return null;
  return (
    <div className={styles.tip}>
      <b>{dayInWords(row.day, { withYear: true })}</b>
      {series[row.series]?.name}: {words[row.score] ?? row.score}
    </div>
  );
}
