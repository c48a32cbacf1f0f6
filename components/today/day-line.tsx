"use client";
import Link from "next/link";
import { useState } from "react";
import { asPercent } from "@/components/charts/time-axis";
import { timeInWords } from "@/server/domain/time/words";
import styles from "./day-line.module.css";
import { coachLines, type HourSpan, hourTicks, shareOf } from "./day-line-layout";
import {
  type DaySession,
  daySessionInWords,
  pitchesPlanned,
  SESSION_STATE_WORDS,
  whoComes,
} from "./day-session";

/** What a {@link DayLine} takes. */
export interface DayLineProps {
  sessions: readonly DaySession[];
  span: HourSpan;
  /** The zone of the hours. */
  zone: string;
  nowMs: number;
  /** Whose line stands first. */
  myPersonId: string;
}

const ROW_PX = 52;
const BOX_PX = 44;
const HEAD_PX = 30;

/** The day with its sessions on it, one line a coach, and where one is in it. Every session is a link. */
export function DayLine({ sessions, span, zone, nowMs, myPersonId }: DayLineProps) {
  const [active, setActive] = useState<DaySession | null>(null);
  const lines = coachLines(sessions, span, myPersonId);
  const heightPx = HEAD_PX + Math.max(1, lines.length) * ROW_PX;
  return (
    <figure className={styles.figure} aria-label="The day's sessions by coach">
      <div className={styles.track}>
        <ul className={styles.names} aria-hidden="true">
          {lines.map((line) => (
            <li key={line.coachPersonId}>{line.coachPersonId === myPersonId ? "You" : line.coachName}</li>
          ))}
        </ul>
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing has no fieldset */}
        <svg className={styles.chart} height={heightPx} role="group" aria-label="Sessions">
          <Hours span={span} zone={zone} nowMs={nowMs} heightPx={heightPx} lines={lines.length} />
          <Now span={span} nowMs={nowMs} zone={zone} heightPx={heightPx} />
          {lines.flatMap((line, row) =>
            line.sessions.map(({ session, from, width }) => (
              <Link
                key={session.id}
                href={`/calendar/${session.id}`}
                className={styles.session}
                aria-label={daySessionInWords(session)}
                onFocus={() => setActive(session)}
                onPointerEnter={() => setActive(session)}
                onPointerLeave={() => setActive(null)}
              >
                <svg
                  x={asPercent(from)}
                  y={HEAD_PX + row * ROW_PX + (ROW_PX - BOX_PX) / 2}
                  width={asPercent(width)}
                  height={BOX_PX}
                  aria-hidden="true"
                >
                  <Box session={session} />
                </svg>
              </Link>
            )),
          )}
        </svg>
      </div>
      <p className={styles.readout} aria-live="polite">
        {active ? daySessionInWords(active) : null}
      </p>
    </figure>
  );
}

function Box({ session }: { session: DaySession }) {
  const state = SESSION_STATE_WORDS[session.state];
  return (
    <foreignObject width="100%" height={BOX_PX}>
      <div className={styles.box} data-state={session.state}>
        <b>{whoComes(session)}</b>
        <span>
          {pitchesPlanned(session)} <span className={styles.more}>{state || session.laneName}</span>
        </span>
      </div>
    </foreignObject>
  );
}

interface HoursProps {
  span: HourSpan;
  zone: string;
  nowMs: number;
  heightPx: number;
  lines: number;
}

/** The share of the line that the word for now takes to each side; an hour's number under it is left out. */
const NOW_WIDTH = 0.04;

function Hours(props: HoursProps) {
  const { span, zone, nowMs, heightPx, lines } = props;
  const isUnderNow = (atMs: number) => Math.abs(shareOf(span, atMs) - shareOf(span, nowMs)) < NOW_WIDTH;
  return (
    <g>
      {hourTicks(span, zone).map((tick) => (
        <svg
          key={tick.atMs}
          x={asPercent(shareOf(span, tick.atMs))}
          width="1"
          overflow="visible"
          aria-hidden="true"
        >
          <line className={styles.rule} y1={HEAD_PX - 6} y2={heightPx} />
          {isUnderNow(tick.atMs) ? null : (
            <text className={styles.hour} x="0" y={HEAD_PX - 13}>
              {tick.hour}
            </text>
          )}
        </svg>
      ))}
      {Array.from({ length: lines + 1 }, (_, row) => HEAD_PX + row * ROW_PX).map((y) => (
        <line key={y} className={styles.rule} x1="0" x2="100%" y1={y} y2={y} />
      ))}
    </g>
  );
}

function Now({
  span,
  nowMs,
  zone,
  heightPx,
}: {
  span: HourSpan;
  nowMs: number;
  zone: string;
  heightPx: number;
}) {
  if (nowMs < span.startMs || nowMs > span.endMs) return null;
  const words = `now ${timeInWords(nowMs, zone)}`;
  return (
    <svg x={asPercent(shareOf(span, nowMs))} width="1" overflow="visible" aria-hidden="true">
      <rect className={styles.nowGround} x="-32" y="3" width="64" height="18" rx="2" />
      <text className={styles.now} x="0" y={HEAD_PX - 13}>
        {words}
      </text>
      <line className={styles.nowLine} y1={HEAD_PX - 8} y2={heightPx} />
    </svg>
  );
}
