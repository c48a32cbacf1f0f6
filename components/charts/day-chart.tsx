"use client";
import {
  CartesianGrid,
  ErrorBar,
  Line,
  LineChart,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from "recharts";
import { TICK } from "./axis-look";
import { daysOn, type TimeAxis } from "./time-axis";
import { useDayAxis } from "./use-day-axis";

/** One day of a {@link DayChart}. */
export interface ChartDay {
  /** Days since the axis began. */
  offset: number;
  value: number;
  /** Half the height of the line through it; 0 draws none. */
  reach: number;
}

/** A stretch of a {@link DayChart} that is shaded, under its number. */
export interface ChartSpan {
  id: string;
  place: number;
  /** Days since the axis began; `to` is null where it goes on. */
  from: number;
  to: number | null;
}

/** What a {@link DayChart} takes. */
export interface DayChartProps {
  days: readonly ChartDay[];
  spans: readonly ChartSpan[];
  /** Heights between broken lines. */
  bands: readonly { from: number; to: number }[];
  axis: TimeAxis;
  least: number;
  greatest: number;
  /** The scale's words from 0 up, where it has steps. */
  steps?: readonly string[] | undefined;
  /** The day in hand, by its place. */
  active: number;
  onActive: (at: number) => void;
  onOpen: (at: number) => void;
}

const MARGIN = { top: 22, right: 16, bottom: 0, left: 0 };

/** Values by days on a time axis, each with its reach; keys and words are the caller's. */
export function DayChart(props: DayChartProps) {
  const { days, spans, bands, axis, least, greatest, steps, active, onActive, onOpen } = props;
  const scalePx = steps ? 64 : 44;
  const { onResize, days: dayAxis } = useDayAxis(axis, scalePx + MARGIN.right);
  const length = daysOn(axis);
  const hasReach = days.some(({ reach }) => reach > 0);
  return (
    <ResponsiveContainer width="100%" height="100%" onResize={onResize}>
      <LineChart data={[...days]} margin={MARGIN} accessibilityLayer={false}>
        {spans.map(({ id, from, to }) => (
          <ReferenceArea key={id} x1={from} x2={to ?? length} fill="var(--dusk)" fillOpacity={0.1} />
        ))}
        {bands.map((band, at) => (
          <ReferenceArea
            key={`${band.from} ${band.to}`}
            y1={band.from}
            y2={band.to}
            fill="none"
            stroke="var(--field)"
            strokeDasharray={at === 0 ? "2 4" : "8 3"}
          />
        ))}
        <CartesianGrid vertical={false} syncWithTicks stroke="var(--line)" />
        <XAxis {...dayAxis} />
        <YAxis
          type="number"
          domain={[least, greatest]}
          {...(steps ? { ticks: steps.map((_, step) => step) } : {})}
          tickFormatter={(value: number) => (steps ? (steps[value] ?? "") : String(value))}
          tick={TICK}
          width={scalePx}
          padding={{ top: 6, bottom: 10 }}
          axisLine={false}
          tickLine={false}
        />
        {spans.map(({ id, place, from }) => (
          <ReferenceLine
            key={id}
            x={from}
            stroke="var(--ink)"
            label={{ value: place, position: "top", fill: "var(--ink)", fontSize: 12 }}
          />
        ))}
        {spans.map(({ id, to }) =>
          to === null ? null : <ReferenceLine key={id} x={to} stroke="var(--ink)" strokeDasharray="3 3" />,
        )}
        <Line
          dataKey="value"
          stroke="var(--dusk)"
          strokeWidth={1.25}
          isAnimationActive={false}
          activeDot={false}
          dot={({ cx, cy, index }) => (
            <Day
              key={index}
              {...{ cx, cy }}
              isActive={index === active}
              onActive={() => onActive(index)}
              onOpen={() => onOpen(index)}
            />
          )}
        >
          {hasReach ? (
            <ErrorBar
              dataKey="reach"
              width={3}
              stroke="var(--dusk)"
              strokeWidth={1}
              isAnimationActive={false}
            />
          ) : null}
        </Line>
      </LineChart>
    </ResponsiveContainer>
  );
}

interface DayProps {
  cx?: number | undefined;
  cy?: number | undefined;
  isActive: boolean;
  onActive: () => void;
  onOpen: () => void;
}

function Day({ cx, cy, isActive, onActive, onOpen }: DayProps) {
  if (cx === undefined || cy === undefined || !Number.isFinite(cy)) return null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys of the whole do what a pointer does here
    <g transform={`translate(${cx} ${cy})`} onPointerEnter={onActive} onClick={onOpen}>
      <circle r={12} fill="transparent" />
      <circle
        r={isActive ? 6.5 : 4}
        fill={isActive ? "var(--ground)" : "var(--ink)"}
        stroke="var(--ink)"
        strokeWidth={isActive ? 2.5 : 1}
      />
    </g>
  );
}
