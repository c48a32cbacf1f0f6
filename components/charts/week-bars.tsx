"use client";

import { type ReactNode, useId } from "react";
import { Bar, BarChart, CartesianGrid, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import { dayInWords } from "@/server/domain/time/words";
import { FIGURE_AXIS, weekAxis } from "./axis-look";
import styles from "./chart.module.css";
import { FigureTable } from "./figure-table";
import { type CountKind, type WeekCounts, weekTotal } from "./week-rows";

/** What a {@link WeekBars} takes. */
export interface WeekBarsProps {
  title: string;
  weeks: readonly WeekCounts[];
  /** At most four, drawn from the ground up: filled, hatched, dotted, open. */
  kinds: readonly CountKind[];
  /** What is counted, e.g. "throws". */
  noun: string;
  /** The same counts as a `Table`. */
  table: ReactNode;
}

const LOOKS = ["solid", "hatched", "dotted", "open"] as const;

/** Counts by week, stacked by kind; kinds differ by pattern. */
export function WeekBars({ title, weeks, kinds, noun, table }: WeekBarsProps) {
  const id = useId().replaceAll(/\W/g, "");
  const fillOf = (index: number) => `url(#${id}${LOOKS[index % LOOKS.length]})`;
  return (
    <figure className={styles.figure} aria-label={title}>
      <figcaption className={styles.title}>{title}</figcaption>
      <Patterns id={id} />
      <div className={styles.chart}>
        <ResponsiveContainer width="100%" height="100%">
          <BarChart data={[...weeks]} margin={{ top: 10, right: 8, bottom: 0, left: 0 }} barCategoryGap="18%">
            <CartesianGrid vertical={false} stroke="var(--line)" />
            <XAxis {...weekAxis(weeks)} />
            <YAxis {...FIGURE_AXIS} allowDecimals={false} />
            <Tooltip
              cursor={{ fill: "var(--line)", fillOpacity: 0.35 }}
              isAnimationActive={false}
              content={({ payload }) => <WeekTip week={payload?.[0]?.payload} kinds={kinds} noun={noun} />}
            />
            {kinds.map(({ key, label }, index) => (
              <Bar
                key={key}
                name={label}
                dataKey={(week: WeekCounts) => week.counts[key] ?? 0}
                stackId="week"
                fill={fillOf(index)}
                stroke="var(--ink)"
                strokeWidth={1}
                isAnimationActive={false}
              />
            ))}
          </BarChart>
        </ResponsiveContainer>
      </div>
      <ul className={styles.key}>
        {kinds.map(({ key, label }, index) => (
          <li key={key}>
            <svg width="20" height="12" aria-hidden="true">
              <rect x="0.5" y="0.5" width="19" height="11" fill={fillOf(index)} stroke="var(--ink)" />
            </svg>
            {label}
          </li>
        ))}
      </ul>
      <FigureTable>{table}</FigureTable>
    </figure>
  );
}

function Patterns({ id }: { id: string }) {
  const tile = { width: 6, height: 6, patternUnits: "userSpaceOnUse" } as const;
  const ground = <rect width="6" height="6" fill="var(--ground)" />;
  return (
    <svg width="0" height="0" aria-hidden="true" display="block">
      <defs>
        <pattern id={`${id}solid`} {...tile}>
          <rect width="6" height="6" fill="var(--ink)" />
        </pattern>
        <pattern id={`${id}hatched`} {...tile} patternTransform="rotate(45)">
          {ground}
          <path d="M1.5 0v6" stroke="var(--ink)" strokeWidth="1.5" />
        </pattern>
        <pattern id={`${id}dotted`} {...tile}>
          {ground}
          <circle cx="3" cy="3" r="1.1" fill="var(--ink)" />
        </pattern>
        <pattern id={`${id}open`} {...tile}>
          {ground}
        </pattern>
      </defs>
    </svg>
  );
}

interface WeekTipProps {
  week: WeekCounts | undefined;
  kinds: readonly CountKind[];
  noun: string;
}

function WeekTip({ week, kinds, noun }: WeekTipProps) {
  if (week === undefined) return null;
  return (
    <div className={styles.tip}>
      <b>
        Week of {dayInWords(week.weekOf)}: {weekTotal(week, kinds)} {noun}
      </b>
      {kinds.map(({ key, label }) => (
        <div key={key}>
          {label}: {week.counts[key] ?? 0}
        </div>
      ))}
    </div>
  );
}
