import { minuteOfDay } from "@/server/domain/time/calendar-day";

const HOUR_MS = 3_600_000;

/** What is laid out: anything with a coach and a span of time. */
export interface TimedSession {
  id: string;
  coachPersonId: string;
  coachName: string;
  startsAtMs: number;
  endsAtMs: number;
}

/** From a full hour to a full hour. */
export interface HourSpan {
  startMs: number;
  endMs: number;
}

/** One coach's line, and the sessions on it by where they begin and how long they are, as shares of the span. */
export interface CoachLine<Session> {
  coachPersonId: string;
  coachName: string;
  sessions: { session: Session; from: number; width: number }[];
}

/** The hours of a day line: from the first opening or session to the last, widened to full hours; null for nothing. */
export function hoursOver(
  open: { startMs: number; endMs: number } | null,
  sessions: readonly TimedSession[],
): HourSpan | null {
  const starts = [...(open ? [open.startMs] : []), ...sessions.map((session) => session.startsAtMs)];
  const ends = [...(open ? [open.endMs] : []), ...sessions.map((session) => session.endsAtMs)];
  if (starts.length === 0) return null;
  /* Zones are whole quarters of an hour from UTC, so a full hour of UTC need not be one on the wall: see hourTicks. */
  const startMs = Math.floor(Math.min(...starts) / HOUR_MS) * HOUR_MS;
  return { startMs, endMs: Math.ceil(Math.max(...ends) / HOUR_MS) * HOUR_MS };
}

/** Where an instant lies on a span, 0 at its start to 1 at its end; outside it stands at the nearer end. */
export function shareOf({ startMs, endMs }: HourSpan, instantMs: number): number {
  return Math.min(1, Math.max(0, (instantMs - startMs) / (endMs - startMs)));
}

/** The full hours on the wall clock of the zone that lie on a span, both ends included, with their numbers. */
export function hourTicks(span: HourSpan, zone: string): { atMs: number; hour: number }[] {
  const ticks: { atMs: number; hour: number }[] = [];
  const pastHourMs = (minuteOfDay(span.startMs, zone) % 60) * 60_000;
  const firstMs = pastHourMs === 0 ? span.startMs : span.startMs - pastHourMs + HOUR_MS;
  for (let atMs = firstMs; atMs <= span.endMs; atMs += HOUR_MS) {
    ticks.push({ atMs, hour: minuteOfDay(atMs, zone) / 60 });
  }
  return ticks;
}

/** One line a coach with sessions, the named person's own line first, the others by name. */
export function coachLines<Session extends TimedSession>(
  sessions: readonly Session[],
  span: HourSpan,
  ownPersonId: string,
): CoachLine<Session>[] {
  const lines = new Map<string, CoachLine<Session>>();
  for (const session of sessions) {
    const { coachPersonId, coachName } = session;
    const line = lines.get(coachPersonId) ?? { coachPersonId, coachName, sessions: [] };
    const from = shareOf(span, session.startsAtMs);
    line.sessions.push({ session, from, width: shareOf(span, session.endsAtMs) - from });
    lines.set(coachPersonId, line);
  }
  const place = (line: CoachLine<Session>) => (line.coachPersonId === ownPersonId ? 0 : 1);
  return [...lines.values()].sort((a, b) => place(a) - place(b) || a.coachName.localeCompare(b.coachName));
}
